package org.layshaft.web;

import java.util.List;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;
import org.layshaft.web.desk.Desk;

/** The desk over the packs on the class path, made once. */
public final class Demo {
    private static final Desk DESK = Desk.over(knowledge());

    private Demo() {}

    public static Desk desk() {
        return DESK;
    }

    public static Layout layout(String id) {
        return DESK.layout(id);
    }

    /** Every failure mode that can befall this layout, each of one part, with nothing told of it. */
    public static List<Fault> everyMode(Layout layout) {
        return DESK.knowledge().failureModes().stream()
                .flatMap(mode -> layout.parts().values().stream()
                        .filter(mode::canBefall)
                        .limit(1)
                        .map(part -> Fault.of(part.id(), mode.name())))
                .toList();
    }

    private static KnowledgeBase knowledge() {
        Reading reading = PackReader.read(PackSource.onClassPath());
        if (!reading.isSound()) {
            throw new IllegalStateException("The packs on the class path are broken: " + reading.findings());
        }
        return reading.knowledge();
    }
}
