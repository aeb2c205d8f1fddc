package org.layshaft.engine.families;

import org.layshaft.engine.exact.Fraction;

/** A ratio as one writes it on paper, pair after pair: driven teeth over driving teeth. */
final class Pairs {
    private Pairs() {}

    /** @param written {@code 51/21 45/27}, or {@code -41/18 45/27} for the other sense */
    static Fraction ratio(String written) {
        boolean reversed = written.startsWith("-");
        Fraction ratio = Fraction.ONE;
        for (String pair : written.substring(reversed ? 1 : 0).split(" ")) {
            String[] teeth = pair.split("/");
            ratio = ratio.times(Fraction.of(Long.parseLong(teeth[0]), Long.parseLong(teeth[1])));
        }
        return reversed ? ratio.negated() : ratio;
    }
}
