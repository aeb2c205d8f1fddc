package org.layshaft.engine.swap;

import java.util.Optional;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.teeth.ShaftThrust;
import org.layshaft.engine.teeth.Thrust;
import org.layshaft.engine.teeth.ThrustSeat;

/**
 * The thrust of one shaft in one gear, and what takes it.
 *
 * @param shaft id of the shaft, or of the differential
 */
public record ThrustComparison(
        String shaft, Telling<Optional<ShaftThrust>> shaftBefore, Telling<Optional<ShaftThrust>> shaftAfter) {

    public Telling<Thrust> before() {
        return thrust(shaftBefore);
    }

    public Telling<Thrust> after() {
        return thrust(shaftAfter);
    }

    public Telling<ThrustSeat> takenBefore() {
        return seat(shaftBefore);
    }

    public Telling<ThrustSeat> takenAfter() {
        return seat(shaftAfter);
    }

    /** Whether it pushes toward the other end now. */
    public Telling<Boolean> reversed() {
        return before().with(
                        after(),
                        (was, is) -> was.toward().isPresent()
                                && is.toward().isPresent()
                                && !was.toward().equals(is.toward()));
    }

    private static Telling<Thrust> thrust(Telling<Optional<ShaftThrust>> shaft) {
        return shaft.then(loaded ->
                loaded.map(ShaftThrust::thrust).orElseGet(() -> Telling.told(new Thrust(0, Optional.empty()))));
    }

    private static Telling<ThrustSeat> seat(Telling<Optional<ShaftThrust>> shaft) {
        return shaft.then(loaded ->
                loaded.map(ShaftThrust::takenBy).orElseGet(() -> Telling.told(new ThrustSeat.NothingToTake())));
    }
}
