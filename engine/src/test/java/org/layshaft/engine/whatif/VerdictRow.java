package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.WhatIf;

/** One row of a table of verdicts: faults, and a word for each gear in order and for neutral. */
record VerdictRow(String faults, WhatIf answer) {
    private static final Map<String, String> WORDS = Map.of(
            "ok", "works",
            "note", "works-with-notice",
            "?", "uncertain",
            "lost", "lost",
            "lock", "locks");

    static VerdictRow of(String layout, String faults) {
        return new VerdictRow(faults, Bench.whatIf(layout, faults));
    }

    void mustBe(String expected) {
        List<String> words = List.of(expected.strip().split("\\s+"));
        Map<String, String> actual = Bench.verdicts(answer);
        assertEquals(words.size(), actual.size(), "a word for each gear and for neutral");
        Map<String, String> wanted = new LinkedHashMap<>();
        actual.keySet().forEach(gear -> wanted.put(gear, WORDS.get(words.get(wanted.size()))));
        assertEquals(wanted, actual, faults);
    }
}
