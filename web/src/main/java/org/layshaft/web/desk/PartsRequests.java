package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import org.layshaft.web.asking.Question;

/** What a question about parts asks of the desks, as one would write it there. */
public final class PartsRequests {
    private static final Optional<String> NONE = Optional.empty();

    private PartsRequests() {}

    public static SwapRequest of(Question.PutIn put) {
        SwapRequest swap = SwapRequest.of(put.box()).putting(put.set());
        return put.place().map(swap::at).orElse(swap);
    }

    public static BenchRequest of(Question.Measured measured) {
        return new BenchRequest(
                NONE,
                Optional.of(measured.teeth()),
                measured.tip(),
                NONE,
                List.of(),
                NONE,
                measured.helix(),
                NONE,
                NONE,
                NONE);
    }

    /** Throws {@link IllegalArgumentException} for a question that wishes nothing. */
    public static WishRequest wish(Question.OfParts question) {
        if (question instanceof Question.Nearer nearer) {
            return WishRequest.of(nearer.box(), WishKind.NEARER)
                    .ofGear(Optional.of(nearer.gear()))
                    .to(nearer.other());
        } else if (question instanceof Question.AxleFor axle) {
            return WishRequest.of(axle.box(), WishKind.AXLE)
                    .ofGear(axle.gear())
                    .coming(axle.rpm())
                    .atSpeed(axle.kmh());
        } else if (question instanceof Question.SpeedGear speed) {
            return WishRequest.of(speed.box(), WishKind.READING).with(Optional.of(speed.axle()), NONE, NONE);
        }
        throw new IllegalArgumentException("No wish: " + question);
    }
}
