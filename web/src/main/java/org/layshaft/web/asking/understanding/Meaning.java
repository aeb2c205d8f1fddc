package org.layshaft.web.asking.understanding;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.PartKind;

/** What a word or a few words may stand for. */
sealed interface Meaning {

    /**
     * One of these parts.
     *
     * @param general whether the words are only the general end of a name: {@code fork}, for every fork
     */
    record Parts(List<String> ids, boolean general) implements Meaning {}

    /** A gear that the box has. */
    record OfGear(String gear) implements Meaning {}

    /** The number of a gear that the box does not have. */
    record NoSuchGear(String gear) implements Meaning {}

    /** Ways of failing, of whatever kind of part. */
    record Modes(List<FailureMode> modes) implements Meaning {}

    /** Something told of a failure: {@code front}, {@code badly}, {@code neutral}. */
    record Told(String value) implements Meaning {}

    /** A layout. */
    record OfLayout(String id) implements Meaning {}

    /** A part that this box does not have and another has. */
    record Elsewhere(PartKind kind, List<String> layouts) implements Meaning {
        Elsewhere andIn(Elsewhere more) {
            return new Elsewhere(
                    kind, Stream.concat(layouts.stream(), more.layouts.stream()).toList());
        }
    }

    /** Words that change nothing. */
    record Aside() implements Meaning {}
}
