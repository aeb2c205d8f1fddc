package org.layshaft.engine.whatif;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;

/** The demo boxes on the bench, with everything the trade knows of failures. */
public final class Bench {
    public static final KnowledgeBase KNOWLEDGE =
            PackReader.read(PackSource.onClassPath()).knowledge();
    public static final Reasoner REASONER = Reasoners.standard(KNOWLEDGE);

    private Bench() {}

    public static Layout layout(String id) {
        return KNOWLEDGE.layout(id).orElseThrow();
    }

    /** What follows from faults as written, {@code 3-4-fork bent side=front}, several parted by semicolons. */
    static WhatIf whatIf(String layout, String written) {
        return REASONER.whatIf(layout(layout), faults(written));
    }

    static List<Fault> faults(String written) {
        return Stream.of(written.split(";"))
                .map(String::strip)
                .map(Bench::fault)
                .toList();
    }

    private static Fault fault(String written) {
        List<String> words = List.of(written.split(" "));
        int told = 2;
        Map<String, String> values = new LinkedHashMap<>();
        words.subList(told, words.size()).forEach(word -> {
            String[] sides = word.split("=");
            values.put(sides[0], sides[1]);
        });
        return new Fault(words.get(0), words.get(1), values);
    }

    /** The verdicts by gear, neutral last, as words: {@code 1 works, 2 lost, neutral works}. */
    static Map<String, String> verdicts(WhatIf answer) {
        Map<String, String> verdicts = new LinkedHashMap<>();
        answer.gears().forEach(gear -> verdicts.put(gear.gear(), gear.verdict().word()));
        verdicts.put("neutral", answer.neutral().verdict().word());
        return verdicts;
    }

    static GearVerdict gear(WhatIf answer, String gear) {
        return answer.gear(gear).orElseThrow();
    }

    /** Reasons and all that they rest on. */
    static Stream<Reason> unfolded(List<Reason> reasons) {
        return reasons.stream().flatMap(reason -> Stream.concat(Stream.of(reason), unfolded(reason.from())));
    }
}
