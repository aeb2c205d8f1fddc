package org.layshaft.kb.reading;

import org.layshaft.kb.words.Term;

/**
 * A word as one file gives it.
 *
 * @param key name of a term; id of the others
 */
public record Word(Group group, String key, Term term) {
    /** The groups that words stand in. */
    public enum Group {
        TERMS,
        NOTICES,
        CONDITIONS,
        TOLD
    }
}
