package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.layout.Layout;

/** Whether evidence names only what there is. */
final class EvidenceCheck {
    private EvidenceCheck() {}

    /**
     * Says everything that is wrong at once.
     *
     * @param notices ids of all notices
     * @param gears names of the gears of the layout
     */
    static void check(Layout layout, Evidence evidence, Collection<String> notices, List<String> gears) {
        List<String> problems = new ArrayList<>();
        for (Observation observation : evidence.observations()) {
            if (!notices.contains(observation.notice())) {
                problems.add("In '%s' nothing is known that is called '%s'. %s"
                        .formatted(
                                observation.written(),
                                observation.notice(),
                                Nearest.advice(observation.notice(), notices)));
            }
            for (String gear : observation.gears()) {
                if (!gears.contains(gear)) {
                    problems.add("In '%s': %s has no gear '%s'. It has %s."
                            .formatted(observation.written(), layout.name(), gear, String.join(", ", gears)));
                }
            }
            boolean notInGear = observation
                    .situation()
                    .filter(situation -> !situation.isInGear())
                    .isPresent();
            if (notInGear && !observation.gears().isEmpty()) {
                problems.add("In '%s' no gear is engaged. Leave '%s' out."
                        .formatted(observation.written(), String.join(", ", observation.gears())));
            }
        }
        if (!problems.isEmpty()) {
            throw new UnanswerableException(String.join("\n", problems));
        }
    }
}
