package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Situation;

/** Tests and what may come of them, in words and as evidence. */
final class TestWords {
    private final Profile.Index index;
    private final ObservationWords words;

    TestWords(Profile.Index index, ObservationWords words) {
        this.index = index;
        this.words = words;
    }

    String trying(Situation situation, List<String> gears) {
        return gears.size() > 1 ? "one after another: " + words.when(situation, gears) : words.when(situation, gears);
    }

    String looking(String family) {
        return "%s: see whether %s".formatted(words.when(Situation.AT_REST, List.of()), words.says(family));
    }

    /**
     * {@code it makes a noise}; of several gears {@code shifting into 2nd: it grinds going in}.
     *
     * @param found counted from the first number of the trial
     */
    String noticed(BitSet found, Trial trial) {
        List<String> gears = trial.gears();
        List<String> parts = new ArrayList<>();
        gearsByFamily(found, trial)
                .forEach((family, in) -> parts.add(
                        gears.size() > 1
                                ? "%s: %s".formatted(words.when(trial.situation(), in), words.says(family))
                                : words.says(family)));
        return parts.isEmpty() ? "nothing is noticed" : Names.joined(parts);
    }

    /**
     * What to note down then.
     *
     * @param any whatever some suspect may show there
     */
    List<Observation> evidence(BitSet found, BitSet any, Trial trial) {
        Map<String, List<String>> noticed = gearsByFamily(found, trial);
        List<Observation> evidence = new ArrayList<>();
        for (String family : gearsByFamily(any, trial).keySet()) {
            List<String> in = noticed.getOrDefault(family, List.of());
            List<String> out =
                    trial.gears().stream().filter(gear -> !in.contains(gear)).toList();
            if (!in.isEmpty()) {
                evidence.add(observation(family, trial.situation(), in, true));
            }
            if (!out.isEmpty()) {
                evidence.add(observation(family, trial.situation(), out, false));
            }
        }
        return evidence;
    }

    private static Observation observation(String family, Situation situation, List<String> gears, boolean seen) {
        return new Observation(
                family, Optional.of(situation), situation.isInGear() ? gears : List.of(), seen, Optional.empty());
    }

    private Map<String, List<String>> gearsByFamily(BitSet found, Trial trial) {
        Map<String, List<String>> gears = new LinkedHashMap<>();
        int first = trial.numbers().nextSetBit(0);
        for (int number = found.nextSetBit(0); number >= 0; number = found.nextSetBit(number + 1)) {
            gears.computeIfAbsent(index.family(first + number), any -> new ArrayList<>())
                    .add(index.cellOf(first + number).gear());
        }
        return gears;
    }
}
