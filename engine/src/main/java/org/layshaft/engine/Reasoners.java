package org.layshaft.engine;

import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.whatif.StandardReasoner;
import org.layshaft.kb.pack.KnowledgeBase;

/** Makes reasoners. */
public final class Reasoners {
    private Reasoners() {}

    /** One that draws on everything the knowledge base holds. Making it is quick; the rules load at its first question. */
    public static Reasoner standard(KnowledgeBase knowledge) {
        return new StandardReasoner(knowledge);
    }
}
