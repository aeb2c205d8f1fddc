package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.symptom.Cell;
import org.layshaft.engine.symptom.Cells;
import org.layshaft.kb.failure.Situation;

/** Evidence about one layout, taken apart by gears. Immutable. */
final class Clues {
    private final Cells cells;
    private final List<Clue> seen = new ArrayList<>();
    private final List<Clue> notSeen = new ArrayList<>();
    private final BitSet covered = new BitSet();
    private final BitSet settled = new BitSet();

    Clues(Evidence evidence, Book book, Sorts sorts) {
        this.cells = book.dictionary().cells();
        for (Observation observation : evidence.observations()) {
            for (Observation single : byGear(observation)) {
                Clue clue = new Clue(
                        single,
                        told(single, sorts.of(single.notice()), book.shown()),
                        told(single, sorts.kin(single.notice()), book.shown()));
                (clue.seen() ? seen : notSeen).add(clue);
                covered.or(clue.exact());
                covered.or(clue.kin());
                if (isSettled(single)) {
                    settled.or(clue.exact());
                    settled.or(clue.kin());
                }
            }
        }
    }

    List<Clue> seen() {
        return seen;
    }

    List<Clue> notSeen() {
        return notSeen;
    }

    /** Everything that somebody looked out for. */
    BitSet covered() {
        return covered;
    }

    /** What has been looked out for in one known cell, or was never noticed: to look again would teach nothing. */
    BitSet settled() {
        return settled;
    }

    /** Whether somebody has tried this cell, and so would have told what else was noticed there. */
    boolean tried(Situation situation, String gear) {
        return Stream.concat(seen.stream(), notSeen.stream())
                .map(Clue::observation)
                .filter(observation -> observation.situation().equals(Optional.of(situation)) && isSettled(observation))
                .anyMatch(observation ->
                        observation.gears().isEmpty() || observation.gears().contains(gear));
    }

    /** Where something was noticed in a gear or at a time that is not told, it remains to be found in which. */
    private static boolean isSettled(Observation observation) {
        boolean told = observation
                .situation()
                .filter(situation ->
                        !situation.isInGear() || !observation.gears().isEmpty())
                .isPresent();
        return told || !observation.seen();
    }

    private static List<Observation> byGear(Observation observation) {
        return observation.gears().isEmpty()
                ? List.of(observation)
                : observation.gears().stream()
                        .map(gear -> observation.in(List.of(gear)))
                        .toList();
    }

    /** The cells named; where no fault shows anything there, those near, since it must have been told of another. */
    private BitSet told(Observation observation, Set<String> notices, BitSet shown) {
        BitSet named = numbers(
                observation, notices, observation.situation().map(Set::of).orElse(Set.of()));
        return named.intersects(shown)
                ? named
                : numbers(
                        observation,
                        notices,
                        observation.situation().map(Near::to).orElse(Set.of()));
    }

    private BitSet numbers(Observation observation, Set<String> notices, Set<Situation> situations) {
        BitSet numbers = new BitSet();
        for (Cell cell : cells.all()) {
            if (isMeant(observation, situations, cell)) {
                notices.forEach(notice -> numbers.set(cells.number(cell, notice)));
            }
        }
        return numbers;
    }

    private static boolean isMeant(Observation observation, Set<Situation> situations, Cell cell) {
        boolean gear = observation.gears().isEmpty() || observation.gears().contains(cell.gear());
        // "Quiet in fourth" is said of driving, not of waiting with the pedal down.
        boolean when = situations.isEmpty()
                ? observation.gears().isEmpty() || cell.situation() != Situation.IN_GEAR_PEDAL_DOWN
                : situations.contains(cell.situation());
        return gear && when;
    }
}
