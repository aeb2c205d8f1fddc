package org.layshaft.engine;

import java.util.List;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.rules.Derivation;
import org.layshaft.engine.suspects.StandardDiagnostician;
import org.layshaft.engine.whatif.StandardReasoner;
import org.layshaft.kb.pack.KnowledgeBase;

/** Makes reasoners. */
public final class Reasoners {
    private Reasoners() {}

    /**
     * Begins to load the rules beside whatever else there is to do at a start, reading packs above all, so that the first
     * question need not wait for them. Returns at once; a failure shows at that question.
     */
    public static void beginLoading() {
        Thread loading = new Thread(() -> Derivation.from(List.of()), "loading rules");
        loading.setDaemon(true);
        loading.start();
    }

    /** One that draws on everything the knowledge base holds. Making it is quick; the rules load at its first question. */
    public static Reasoner standard(KnowledgeBase knowledge) {
        return new StandardReasoner(knowledge);
    }

    /** One that goes back from what is noticed; what faults show is worked out at the first question about a layout. */
    public static Diagnostician diagnostician(KnowledgeBase knowledge, Reasoner reasoner) {
        return new StandardDiagnostician(knowledge, reasoner);
    }
}
