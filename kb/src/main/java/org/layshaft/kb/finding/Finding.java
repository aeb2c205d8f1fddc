package org.layshaft.kb.finding;

/**
 * Something that is wrong, or doubtful, in a pack.
 *
 * @param file the file, as the reader would open it
 * @param pointer JSON pointer into the file; empty for the whole of it
 * @param line line of that place, from 1; 0 where there is none
 * @param what what is wrong, in a sentence
 * @param value the value found there; empty where there is none
 * @param advice what to do, in a sentence
 */
public record Finding(Grade grade, String file, String pointer, int line, String what, String value, String advice) {
    /** How bad it is. */
    public enum Grade {
        /** Nothing of the pack is loaded. */
        BROKEN,
        /** The pack is loaded; a person should look. */
        DOUBTFUL
    }
}
