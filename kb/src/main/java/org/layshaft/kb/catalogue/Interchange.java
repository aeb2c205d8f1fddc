package org.layshaft.kb.catalogue;

import java.util.List;

/**
 * That one part may be used in place of another. It says nothing of the other direction.
 *
 * @param use number of the part or set that may be used
 * @param inPlaceOf number of the one that was there
 * @param with numbers of what must come along
 * @param note anything that a person should read; empty where there is nothing
 */
public record Interchange(String use, String inPlaceOf, List<String> with, String note) {
    public Interchange {
        with = List.copyOf(with);
    }
}
