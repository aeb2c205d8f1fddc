package org.layshaft.engine.swap;

import java.util.Comparator;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Serving;

/**
 * A set that can be had, and meets a wish, whether or not it serves.
 *
 * @param serving where it would stand, how it comes out, and with what else
 * @param change what it changes
 * @param ratio of the box in the gear that the wish is about, without sign
 * @param distance from the best ratio, as a part of it
 */
public record SetOffer(Serving serving, Change change, Fraction ratio, Fraction distance) {
    /**
     * What serves before what does not; of what does not, what fails the fewest checks; the nearest to the wish; what fits
     * as it is; the fewest companions.
     */
    static final Comparator<SetOffer> BEST_FIRST = Comparator.comparing((SetOffer offer) -> !offer.serves())
            .thenComparing(
                    offer -> offer.serves() ? 0 : offer.serving().failing().count())
            .thenComparing(SetOffer::distance)
            .thenComparing(offer -> offer.serving().verdict())
            .thenComparing(SetOffer::companions)
            .thenComparing(offer -> -offer.serving().placement().parts().size())
            .thenComparing(offer -> offer.serving().placement().set().number());

    /** Whether it fits, as it is or with companions. */
    public boolean serves() {
        FitVerdict verdict = serving.verdict();
        return verdict == FitVerdict.FITS || verdict == FitVerdict.FITS_WITH;
    }

    private int companions() {
        return serving.companions().isEmpty()
                ? 0
                : serving.companions().get(0).units().size();
    }
}
