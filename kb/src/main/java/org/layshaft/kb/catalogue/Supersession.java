package org.layshaft.kb.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * That a number is no longer supplied and another stands in its place. It runs one way: nothing follows for the old in
 * place of the new.
 *
 * @param was number of a part or set
 * @param by number of what replaces it; empty where nothing does
 * @param serials the boxes that this holds for
 * @param with numbers of what must come along
 * @param note anything that a person should read; empty where there is nothing
 */
public record Supersession(String was, Optional<String> by, SerialRange serials, List<String> with, String note) {
    public Supersession {
        with = List.copyOf(with);
    }
}
