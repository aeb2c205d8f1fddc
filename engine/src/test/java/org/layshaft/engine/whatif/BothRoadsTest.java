package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.symptom.Cell;
import org.layshaft.engine.symptom.Cells;
import org.layshaft.engine.symptom.FaultDictionary;
import org.layshaft.engine.symptom.Signs;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/** What single faults are noticed by: the rules, of one fault at a time, say what the dictionary of all of them says. */
class BothRoadsTest {
    /** Of a layout with more failures than this, every second, third and so on is asked about. */
    private static final int MOST = Integer.getInteger("layshaft.failures", 60);

    private static KnowledgeBase everyFailure;

    @BeforeAll
    static void read(@TempDir Path folder) {
        everyFailure = EveryFailure.readIn(folder);
    }

    static Stream<String> layouts() {
        return Bench.KNOWLEDGE.layouts().keySet().stream();
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover", "avocet", "turnstone", "egret"})
    void every_change_shows_the_same_on_every_occasion(String layout) {
        compare(everyFailure, layout, entry -> EveryFailure.is(entry.fault().mode()));
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void what_the_trade_knows_shows_the_same(String layout) {
        compare(Bench.KNOWLEDGE, layout, entry -> true);
    }

    private static void compare(KnowledgeBase knowledge, String id, Predicate<FaultDictionary.Entry> which) {
        Reasoner reasoner = Reasoners.standard(knowledge);
        Layout layout = knowledge.layout(id).orElseThrow();
        FaultDictionary dictionary = FaultDictionary.of(knowledge, reasoner.box(layout));
        List<FaultDictionary.Entry> entries =
                dictionary.entries().stream().filter(which).toList();
        assertTrue(entries.size() > 5, () -> id + " can fail in " + entries.size() + " ways");
        int step = entries.size() / MOST + 1;
        IntStream.iterate(0, number -> number < entries.size(), number -> number + step)
                .mapToObj(entries::get)
                .forEach(entry -> compare(reasoner, layout, dictionary.cells(), entry));
    }

    private static void compare(Reasoner reasoner, Layout layout, Cells cells, FaultDictionary.Entry entry) {
        String where = layout.id() + ": " + entry.fault().written();
        WhatIf answer;
        try {
            answer = reasoner.whatIf(layout, List.of(entry.fault()));
        } catch (IllegalStateException broken) {
            throw new AssertionError(where, broken);
        }
        for (Heat heat : Heat.values()) {
            Signs signs = entry.shown().at(heat);
            SortedSet<String> certain = said(answer, heat, true);
            SortedSet<String> perhaps = said(answer, heat, false);
            perhaps.removeAll(certain);
            requireSame(written(cells, signs.certain().stream()), certain, where + ", certain");
            requireSame(written(cells, signs.perhaps().stream()), perhaps, where + ", perhaps");
        }
    }

    private static void requireSame(SortedSet<String> byEquations, SortedSet<String> byRules, String where) {
        SortedSet<String> byEquationsOnly = new TreeSet<>(byEquations);
        byEquationsOnly.removeAll(byRules);
        SortedSet<String> byRulesOnly = new TreeSet<>(byRules);
        byRulesOnly.removeAll(byEquations);
        assertEquals(List.of(), List.copyOf(byEquationsOnly), where + ", by the equations only");
        assertEquals(List.of(), List.copyOf(byRulesOnly), where + ", by the rules only");
    }

    private static SortedSet<String> written(Cells cells, IntStream numbers) {
        SortedSet<String> written = new TreeSet<>();
        numbers.forEach(number -> {
            Cell cell = cells.cell(number);
            written.add(written(cell.gear(), cell.situation().word(), cells.notice(number)));
        });
        return written;
    }

    private static SortedSet<String> said(WhatIf answer, Heat heat, boolean certain) {
        SortedSet<String> said = new TreeSet<>();
        for (GearVerdict gear : answer.gears()) {
            gear.notices().forEach(notice -> add(said, gear.gear(), notice, heat, certain));
        }
        answer.neutral().notices().forEach(notice -> add(said, Run.NEUTRAL, notice, heat, certain));
        return said;
    }

    private static void add(SortedSet<String> said, String gear, Notice notice, Heat heat, boolean certain) {
        if (notice.certain() == certain
                && notice.heat().filter(only -> only != heat).isEmpty()) {
            said.add(written(gear, notice.condition(), notice.notice()));
        }
    }

    private static String written(String gear, String situation, String notice) {
        return "%s, %s: %s".formatted(gear, situation, notice);
    }
}
