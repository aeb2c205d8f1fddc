package org.layshaft.kb.catalogue;

/**
 * One fact of a part.
 *
 * @param text as typed: {@code 2.50}, {@code left}
 * @param number its value where it is a number, else NaN
 * @param measured whether somebody measured it; otherwise it is only stated
 */
public record Fact(FactName name, String text, double number, boolean measured) {

    public static Fact of(FactName name, double number) {
        String text = number == Math.rint(number) && Math.abs(number) < 1e9
                ? Long.toString((long) number)
                : Double.toString(number);
        return new Fact(name, text, number, false);
    }

    public static Fact of(FactName name, String word) {
        return new Fact(name, word, Double.NaN, false);
    }

    public Fact asMeasured() {
        return new Fact(name, text, number, true);
    }

    /** With its unit: {@code 2.5 mm}. */
    public String shown() {
        return text + name.unit().map(FactName.Unit::suffix).orElse("");
    }
}
