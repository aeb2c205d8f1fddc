package org.layshaft.engine.sound;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Shaft;

/**
 * A bearing and the turns of the two things that it lies between, both as the case sees them, or both as the carrier does
 * that takes a planet round.
 *
 * @param carried whether it goes round with a carrier
 */
record BearingPlace(Bearing bearing, Fraction inner, Fraction outer, boolean carried) {

    /** Empty where nothing fixes one of the two. */
    static Optional<BearingPlace> of(Bearing bearing, Rates rates) {
        Optional<Shaft> spindle = rates.layout()
                .find(Shaft.class, bearing.inner())
                .filter(shaft -> shaft.carriedBy().isPresent());
        Optional<Fraction> inner = rates.inItsPlace(bearing.inner());
        Optional<Fraction> outer = rates.inItsPlace(bearing.outer());
        if (spindle.isPresent()) {
            // a free planet turns on a spindle that stands in its carrier; one that is fixed turns with it, in the
            // carrier
            boolean underGear = rates.layout().find(Gear.class, bearing.outer()).isPresent();
            inner = underGear ? Optional.of(Fraction.ZERO) : inner;
            outer = bearing.outer().equals(Bearing.CASE) ? Optional.of(Fraction.ZERO) : outer;
        }
        Optional<Fraction> turnsOfOuter = outer;
        return inner.flatMap(
                mine -> turnsOfOuter.map(theirs -> new BearingPlace(bearing, mine, theirs, spindle.isPresent())));
    }

    /** Turns of the one ring against the other. */
    Fraction difference() {
        return inner.minus(outer);
    }

    boolean rolls() {
        return !difference().isZero();
    }

    /** Turns of the cage as the case, or the carrier, sees them. */
    Order cage(RollingOrders rolling) {
        Fraction againstOuter = rolling.cage().perTurn();
        return new Order(
                outer.plus(difference().times(againstOuter)).absolute(),
                rolling.cage().exact());
    }
}
