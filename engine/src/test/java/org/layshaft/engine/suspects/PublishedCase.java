package org.layshaft.engine.suspects;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.api.Suspect;
import org.layshaft.kb.layout.Part;

/**
 * A repair as somebody told it, put to the nearest demo box.
 *
 * @param told the box and the complaint in our words
 * @param confirmed what was found, in our words
 * @param faults what would be the same fault of the demo box: by id of the part and name of the mode
 */
record PublishedCase(String id, String told, String layout, String evidence, String confirmed, String faults) {

    boolean means(Suspect suspect) {
        return suspect.faults().stream().anyMatch(fault -> (fault.part() + " " + fault.mode()).matches(faults));
    }

    /** Faults that there are in the catalogue and are the one confirmed. */
    List<String> known() {
        return Desk.layout(layout).parts().values().stream()
                .flatMap(this::known)
                .filter(fault -> fault.matches(faults))
                .toList();
    }

    private Stream<String> known(Part part) {
        return Desk.KNOWLEDGE.failureModesOf(part).stream().map(mode -> part.id() + " " + mode.name());
    }
}
