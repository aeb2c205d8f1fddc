package org.layshaft.engine.rules.fact;

import java.util.List;
import org.layshaft.engine.words.Names;

/** Something that is so. Records, so that equal facts are one fact. */
public interface Fact {

    /** It, in words: a clause that can stand alone, without full stop. */
    String says(Names names);

    /** For a given fact, what else it rests on: a fault, say. A conclusion's premises are kept with its rule instead. */
    default List<Fact> restsOn() {
        return List.of();
    }
}
