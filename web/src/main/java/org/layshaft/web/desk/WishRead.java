package org.layshaft.web.desk;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.swap.Change;
import org.layshaft.engine.swap.Wish;

/**
 * A wish as it was taken in.
 *
 * @param says in words, without the box
 * @param wish of a gear, to be met by other teeth
 * @param centreMm centre distance that was told
 * @param axle that is wished for
 * @param reading what goes in or on, for the speed reading to be kept right
 */
record WishRead(
        String says,
        Optional<Wish> wish,
        Optional<Fraction> centreMm,
        Optional<WishedAxle> axle,
        Optional<Change> reading) {

    /**
     * An axle for an engine speed at a road speed, or for other tyres.
     *
     * @param rpm empty for the engine speed that there was on the tyres before
     */
    record WishedAxle(String gear, Optional<Fraction> rpm, Optional<Fraction> kmh, Optional<String> tyre) {}
}
