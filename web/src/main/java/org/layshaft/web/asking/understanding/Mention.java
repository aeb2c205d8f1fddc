package org.layshaft.web.asking.understanding;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.failure.FailureMode;

/**
 * Words of a question that stand for something.
 *
 * @param from index of the first word
 * @param to index after the last word
 * @param typed the words as typed
 */
record Mention(int from, int to, String typed, Collection<Meaning> meanings) {

    List<String> parts() {
        return all(Meaning.Parts.class)
                .flatMap(parts -> parts.ids().stream())
                .distinct()
                .toList();
    }

    /** Whether it names parts by the general end of their names alone. */
    boolean isGeneral() {
        return all(Meaning.Parts.class).findAny().isPresent()
                && all(Meaning.Parts.class).allMatch(Meaning.Parts::general);
    }

    boolean isSpecificPart() {
        return all(Meaning.Parts.class).anyMatch(parts -> !parts.general());
    }

    Optional<String> gear() {
        return all(Meaning.OfGear.class).map(Meaning.OfGear::gear).findFirst();
    }

    List<FailureMode> modes() {
        return all(Meaning.Modes.class).flatMap(modes -> modes.modes().stream()).toList();
    }

    List<String> told() {
        return all(Meaning.Told.class).map(Meaning.Told::value).toList();
    }

    <M extends Meaning> Stream<M> all(Class<M> type) {
        return meanings.stream().filter(type::isInstance).map(type::cast);
    }

    <M extends Meaning> Optional<M> one(Class<M> type) {
        return all(type).findFirst();
    }

    /** How many words lie between two mentions; 0 for neighbours. */
    int gapTo(Mention other) {
        return other.from >= to ? other.from - to : from - other.to;
    }
}
