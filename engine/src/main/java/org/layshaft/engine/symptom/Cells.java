package org.layshaft.engine.symptom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.failure.Situation;

/** The cells of one layout and what may be noticed in each, numbered for sets. Immutable. */
public final class Cells {
    private final List<Cell> all;
    private final Map<Cell, Integer> numbers = new HashMap<>();
    private final Map<Situation, List<String>> gears;
    private final List<String> notices;
    private final Map<String, Integer> noticeNumbers = new HashMap<>();

    /**
     * @param gears names of the gears, in their order
     * @param notices ids of all notices
     */
    Cells(List<String> gears, List<String> notices) {
        this.notices = List.copyOf(notices);
        notices.forEach(notice -> noticeNumbers.put(notice, noticeNumbers.size()));
        this.gears = new HashMap<>();
        List<Cell> cells = new ArrayList<>();
        for (Situation situation : Situation.values()) {
            List<String> at = situation.isInGear() ? List.copyOf(gears) : List.of(World.NEUTRAL);
            this.gears.put(situation, at);
            at.forEach(gear -> cells.add(new Cell(situation, gear)));
        }
        this.all = List.copyOf(cells);
        all.forEach(cell -> numbers.put(cell, numbers.size()));
    }

    /** Every cell, by situation and then by gear. */
    public List<Cell> all() {
        return all;
    }

    /** The gears that a situation is asked of. */
    public List<String> gears(Situation situation) {
        return gears.get(situation);
    }

    /** Number of a notice in a cell; throws {@link IllegalArgumentException} where there is no such cell or notice. */
    public int number(Cell cell, String notice) {
        Integer row = numbers.get(cell);
        Integer column = noticeNumbers.get(notice);
        if (row == null || column == null) {
            throw new IllegalArgumentException("There is no cell for '%s' in %s.".formatted(notice, cell));
        }
        return row * notices.size() + column;
    }

    public Cell cell(int number) {
        return all.get(number / notices.size());
    }

    public String notice(int number) {
        return notices.get(number % notices.size());
    }

    /** How many numbers there are. */
    public int size() {
        return all.size() * notices.size();
    }
}
