package org.layshaft.web.asking.understanding;

import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/**
 * Everything one needs to follow a question about one box.
 *
 * @param lexicon its words
 * @param belongings which of its parts go together
 * @param names what its parts are called in sentences
 */
record BoxWords(KnowledgeBase knowledge, Box box, Lexicon lexicon, Belongings belongings, Names names) {

    Layout layout() {
        return box.layout();
    }

    Part part(String id) {
        return layout().the(Part.class, id);
    }

    Stream<FailureMode> modesFor(String part) {
        return knowledge.failureModesOf(part(part)).stream();
    }
}
