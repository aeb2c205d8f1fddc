package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.symptom.Cell;
import org.layshaft.engine.symptom.Cells;
import org.layshaft.engine.symptom.Shown;
import org.layshaft.engine.symptom.Signs;

/**
 * What one would find in each cell, as far as people tell notices apart: by family.
 *
 * @param certain numbers of {@link Index}
 * @param possible those, and what may be found besides
 */
record Profile(BitSet certain, BitSet possible) {

    /** Numbers of cells and families of notices. */
    static final class Index {
        private final Cells cells;
        private final Map<Cell, Integer> rows = new HashMap<>();
        private final List<String> families;
        private final Map<String, Integer> columns = new HashMap<>();

        Index(Cells cells, Sorts sorts) {
            this.cells = cells;
            this.families = new ArrayList<>(sorts.families());
            cells.all().forEach(cell -> rows.put(cell, rows.size()));
            for (String family : families) {
                sorts.of(family).forEach(notice -> columns.put(notice, families.indexOf(family)));
            }
        }

        Profile of(Shown shown) {
            BitSet certain = new BitSet();
            BitSet possible = new BitSet();
            for (Signs signs : List.of(shown.cold(), shown.hot())) {
                add(signs.certain(), possible);
                add(signs.perhaps(), possible);
            }
            BitSet always = (BitSet) shown.cold().certain().clone();
            always.and(shown.hot().certain());
            add(always, certain);
            return new Profile(certain, possible);
        }

        private void add(BitSet signs, BitSet to) {
            for (int number = signs.nextSetBit(0); number >= 0; number = signs.nextSetBit(number + 1)) {
                to.set(rows.get(cells.cell(number)) * families.size() + columns.get(cells.notice(number)));
            }
        }

        /** The numbers of a cell of those families that something remains to be found of. */
        BitSet open(Cell cell, BitSet settled) {
            BitSet numbers = new BitSet();
            int first = rows.get(cell) * families.size();
            for (int column = 0; column < families.size(); column++) {
                numbers.set(first + column, !settled.get(cells.number(cell, families.get(column))));
            }
            return numbers;
        }

        String family(int number) {
            return families.get(number % families.size());
        }

        Cell cellOf(int number) {
            return cells.all().get(number / families.size());
        }
    }

    /** What is found for certain of some numbers, counted from the first of them. */
    BitSet certainOf(BitSet numbers) {
        return common(certain, numbers);
    }

    /** The same, with what may be found besides. */
    BitSet possibleOf(BitSet numbers) {
        return common(possible, numbers);
    }

    /** Counted from the first, since the numbers of one situation lie close together among very many. */
    private static BitSet common(BitSet found, BitSet numbers) {
        int first = Math.max(0, numbers.nextSetBit(0));
        BitSet common = found.get(first, numbers.length());
        common.and(numbers.get(first, numbers.length()));
        return common;
    }
}
