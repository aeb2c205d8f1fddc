package org.layshaft.web.asking;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.desk.PartsSayings;

/** What the packs on the class path hold, with three boxes of it, and questions about these. */
public final class Saltmarsh {
    public static final KnowledgeBase KNOWLEDGE = with("avocet", "curlew", "plover");
    private static final Reasoner REASONER = Reasoners.standard(KNOWLEDGE);
    public static final Asking ASKING = new Asking(
            KNOWLEDGE,
            REASONER,
            Reasoners.diagnostician(KNOWLEDGE, REASONER),
            new PartsSayings(new PartsDesk(KNOWLEDGE)));

    private Saltmarsh() {}

    private static KnowledgeBase with(String... layouts) {
        KnowledgeBase all = PackReader.read(PackSource.onClassPath()).knowledge();
        Map<String, Layout> few = new LinkedHashMap<>(all.layouts());
        few.keySet().retainAll(List.of(layouts));
        return new KnowledgeBase(all.packs(), few, all.failureModes(), all.words(), all.catalogue());
    }

    static Layout layout(String id) {
        return KNOWLEDGE.layout(id).orElseThrow();
    }

    static Understanding understood(String layout, String words) {
        return ASKING.understand(Optional.ofNullable(layout), words);
    }

    /** The answer's sentences in one. */
    static String answered(String layout, String words) {
        Understanding.Understood understood = (Understanding.Understood) understood(layout, words);
        return String.join(" ", ASKING.answer(understood.reading().question()).says());
    }
}
