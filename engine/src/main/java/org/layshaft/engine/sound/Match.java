package org.layshaft.engine.sound;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Source.Beat;

/**
 * A source at which, or beside which, a measured frequency lies.
 *
 * @param rank 1 for the likeliest; the same for those that nothing sets apart, so that two may share it
 * @param harmonic which multiple of its order; 1 for the plain order
 * @param sideband empty for the harmonic itself
 * @param order of what fits, sideband included, for one turn of the input
 * @param offPercent how far that lies from what was measured, in percent of it; less than 0 below it
 */
public record Match(
        int rank,
        Source source,
        int harmonic,
        Optional<Sideband> sideband,
        Order order,
        Fraction hz,
        Fraction offPercent) {

    /**
     * A line beside a harmonic.
     *
     * @param times how many steps away, less than 0 below it
     */
    public record Sideband(Beat beat, int times) {}

    /** What of the source this is: {@code the 2nd harmonic, 1 × the turns of third gear below it}; empty for the plain order. */
    public Optional<String> says() {
        String multiple = harmonic == 1 ? "" : "%s harmonic".formatted(ordinal(harmonic));
        if (sideband.isEmpty()) {
            return Optional.of(multiple).filter(said -> !said.isEmpty());
        }
        Sideband band = sideband.get();
        return Optional.of("sideband of %s, %d × %s %s"
                .formatted(
                        multiple.isEmpty() ? "the plain order" : "the " + multiple,
                        Math.abs(band.times()),
                        band.beat().what(),
                        band.times() < 0 ? "below" : "above"));
    }

    private static String ordinal(int number) {
        int last = number % 10;
        boolean teen = number / 10 % 10 == 1;
        String ending = teen ? "th" : last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th";
        return number + ending;
    }
}
