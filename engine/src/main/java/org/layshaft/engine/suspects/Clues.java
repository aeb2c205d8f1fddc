package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.symptom.Cell;
import org.layshaft.engine.symptom.Cells;
import org.layshaft.kb.failure.Situation;

/** Evidence about one layout, taken apart by gears. Immutable. */
final class Clues {
    private final Cells cells;
    private final Sorts sorts;
    private final List<Clue> seen = new ArrayList<>();
    private final List<Clue> notSeen = new ArrayList<>();
    private final BitSet covered = new BitSet();

    Clues(Evidence evidence, Cells cells, Sorts sorts) {
        this.cells = cells;
        this.sorts = sorts;
        for (Observation observation : evidence.observations()) {
            for (Observation single : byGear(observation)) {
                Clue clue = new Clue(
                        single,
                        numbers(single, sorts.of(single.notice())),
                        numbers(single, sorts.kin(single.notice())));
                (clue.seen() ? seen : notSeen).add(clue);
                covered.or(clue.exact());
                covered.or(clue.kin());
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

    /** Whether this cell has been tried. Where something was noticed in a gear that is not told, no gear has been. */
    boolean tried(Situation situation, String gear) {
        return seen.stream().anyMatch(clue -> tried(clue.observation(), situation, gear))
                || notSeen.stream().anyMatch(clue -> tried(clue.observation(), situation, gear));
    }

    private static boolean tried(Observation observation, Situation situation, String gear) {
        boolean anyGear = observation.gears().isEmpty();
        return observation.situation().equals(Optional.of(situation))
                && (anyGear
                        ? !situation.isInGear() || !observation.seen()
                        : observation.gears().contains(gear));
    }

    private static List<Observation> byGear(Observation observation) {
        return observation.gears().isEmpty()
                ? List.of(observation)
                : observation.gears().stream()
                        .map(gear -> observation.in(List.of(gear)))
                        .toList();
    }

    private BitSet numbers(Observation observation, Set<String> notices) {
        BitSet numbers = new BitSet();
        for (Cell cell : cells.all()) {
            if (isMeant(observation, cell)) {
                notices.forEach(notice -> numbers.set(cells.number(cell, notice)));
            }
        }
        return numbers;
    }

    private static boolean isMeant(Observation observation, Cell cell) {
        boolean gear = observation.gears().isEmpty() || observation.gears().contains(cell.gear());
        return gear
                && observation
                        .situation()
                        .map(cell.situation()::equals)
                        // "Quiet in fourth" is said of driving, not of waiting with the pedal down.
                        .orElse(observation.gears().isEmpty() || cell.situation() != Situation.IN_GEAR_PEDAL_DOWN);
    }
}
