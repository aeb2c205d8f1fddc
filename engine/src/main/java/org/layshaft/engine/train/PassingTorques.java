package org.layshaft.engine.train;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.api.Torques;
import org.layshaft.engine.exact.Fraction;

/** How much torque goes through each body: what comes in equals what goes out, so half of all that acts on it. Stateless. */
public final class PassingTorques {
    private PassingTorques() {}

    /** Empty where no torque reaches the output. */
    public static Optional<Torques> of(Train train) {
        return Statics.of(train).torques().map(torques -> of(train, torques));
    }

    private static Torques of(Train train, Balance.Torques torques) {
        Map<String, Fraction> all = new LinkedHashMap<>();
        train.bodies().forEach(body -> all.put(body, Fraction.ZERO));
        train.connections()
                .forEach(connection -> torques.on(connection)
                        .forEach((body, torque) -> all.merge(body, torque.absolute(), Fraction::plus)));
        all.merge(train.input(), Fraction.ONE, Fraction::plus);
        all.merge(train.output(), torques.output().absolute(), Fraction::plus);
        Fraction half = Fraction.of(2).inverse();
        all.replaceAll((body, torque) -> torque.times(half));
        return new Torques(all, torques.shareIsAssumed());
    }
}
