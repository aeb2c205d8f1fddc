package org.layshaft.kb.keeping;

/**
 * A text as it is kept.
 *
 * @param version SHA-256 of its bytes, in hexadecimal
 */
public record Kept(Place place, String text, String version) {
    static Kept of(Place place, String text) {
        return new Kept(place, text, Version.of(text));
    }
}
