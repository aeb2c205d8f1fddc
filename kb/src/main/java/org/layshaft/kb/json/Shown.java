package org.layshaft.kb.json;

/** Values as they stand in findings: on one line, and not too long. */
final class Shown {
    private static final int LONGEST = 80;

    private Shown() {}

    static String of(Object value) {
        String line = printable(String.valueOf(value));
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1) + "…";
    }

    private static String printable(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints()
                .limit(LONGEST + 1L)
                .map(letter -> Character.isWhitespace(letter) ? ' ' : letter)
                .map(letter -> Character.isISOControl(letter) ? '\uFFFD' : letter)
                .forEach(line::appendCodePoint);
        return line.toString();
    }
}
