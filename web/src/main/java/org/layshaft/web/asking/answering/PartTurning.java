package org.layshaft.web.asking.answering;

import org.layshaft.kb.layout.Part;
import org.layshaft.web.asking.Saying;

/** How one part turns. */
final class PartTurning {
    private PartTurning() {}

    /**
     * A sentence.
     *
     * @param when {@code In neutral}
     */
    static String said(Facts facts, Turning turning, String part, String when) {
        Part found = facts.box().layout().the(Part.class, part);
        String name = facts.names().the(part);
        return turning.bodyOf(found)
                .map(body -> "%s %s %s.".formatted(when, name, turning.said(body)))
                .orElseGet(() -> Saying.sentence(name) + " does not turn at all.");
    }
}
