package org.layshaft.engine.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.symptom.FaultDictionary.Entry;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.Heat;

/** What two faults at once are noticed by: the rules say what the dictionary says. */
class PairsAgainstRulesTest {
    private static final int PAIRS = 60;

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover"})
    void they_say_the_same_of_two_at_once(String id) {
        FaultDictionary dictionary = Books.of(id);
        List<Entry> entries = dictionary.entries();
        Random random = new Random(11);
        for (int pair = 0; pair < PAIRS; pair++) {
            Entry one = entries.get(random.nextInt(entries.size()));
            Entry other = entries.get(random.nextInt(entries.size()));
            if (!one.fault().part().equals(other.fault().part())) {
                agree(dictionary, List.of(one, other));
            }
        }
    }

    private static void agree(FaultDictionary dictionary, List<Entry> some) {
        List<Fault> faults = some.stream().map(Entry::fault).toList();
        WhatIf byRules;
        try {
            byRules = Books.REASONER.whatIf(dictionary.layout(), faults);
        } catch (UnanswerableException contradiction) {
            return;
        }
        Shown shown = dictionary.together(some);
        Set<String> byEquations = new TreeSet<>();
        for (Heat heat : Heat.values()) {
            Signs signs = shown.at(heat);
            told(dictionary, signs.certain(), heat, "", byEquations);
            told(dictionary, signs.perhaps(), heat, "perhaps ", byEquations);
        }
        Set<String> rules = new TreeSet<>();
        byRules.gears().forEach(gear -> told(gear.gear(), gear.notices(), rules));
        told(World.NEUTRAL, byRules.neutral().notices(), rules);
        assertEquals(
                String.join("\n", rules),
                String.join("\n", byEquations),
                () -> dictionary.layout().id() + ": " + faults);
    }

    private static void told(FaultDictionary dictionary, BitSet numbers, Heat heat, String how, Set<String> told) {
        numbers.stream().forEach(number -> {
            Cell cell = dictionary.cells().cell(number);
            told.add("%s %s %s: %s%s"
                    .formatted(
                            heat.word(),
                            cell.situation().word(),
                            cell.gear(),
                            how,
                            dictionary.cells().notice(number)));
        });
    }

    private static void told(String gear, List<Notice> notices, Set<String> told) {
        for (Notice notice : notices) {
            String how = notice.certain() ? "" : "perhaps ";
            for (Heat heat : Heat.values()) {
                if (notice.heat().filter(only -> only != heat).isEmpty()) {
                    told.add("%s %s %s: %s%s".formatted(heat.word(), notice.condition(), gear, how, notice.notice()));
                }
            }
        }
    }
}
