package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.api.Effort;
import org.layshaft.engine.symptom.Cell;
import org.layshaft.engine.symptom.Cells;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.words.Words;

/** Everything that nobody has tried yet. */
final class Trials {
    private final Cells cells;
    private final Clues clues;
    private final Profile.Index index;
    private final TestWords testWords;
    private final Words words;

    Trials(Cells cells, Clues clues, Profile.Index index, TestWords testWords, Words words) {
        this.cells = cells;
        this.clues = clues;
        this.index = index;
        this.testWords = testWords;
        this.words = words;
    }

    /** All that can be tried in a situation: in one gear, or in one after another. */
    Stream<Trial> in(Situation situation) {
        if (situation == Situation.AT_REST) {
            return looks();
        }
        List<String> open = cells.gears(situation).stream()
                .filter(gear -> !clues.tried(situation, gear))
                .toList();
        List<List<String>> choices = new ArrayList<>();
        open.forEach(gear -> choices.add(List.of(gear)));
        if (open.size() > 1) {
            choices.add(open);
        }
        return choices.stream()
                .map(gears -> new Trial(
                        testWords.trying(situation, gears),
                        situation,
                        gears,
                        open(situation, gears),
                        Effort.of(situation)));
    }

    /** At rest each thing is looked at by itself: who sees whether it leaks has not yet drained the oil. */
    private Stream<Trial> looks() {
        List<String> gears = cells.gears(Situation.AT_REST);
        return open(Situation.AT_REST, gears).stream().mapToObj(number -> {
            String family = index.family(number);
            Depth depth = words.notices().get(family).seenAt();
            BitSet one = new BitSet();
            one.set(number);
            return new Trial(
                    testWords.looking(family),
                    Situation.AT_REST,
                    gears,
                    one,
                    depth == Depth.OUTSIDE ? Effort.STANDING : Effort.of(depth));
        });
    }

    private BitSet open(Situation situation, List<String> gears) {
        BitSet open = new BitSet();
        gears.forEach(gear -> open.or(index.open(new Cell(situation, gear), clues.settled())));
        return open;
    }
}
