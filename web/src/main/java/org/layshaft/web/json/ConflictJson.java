package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.Conflict;

/**
 * Two gears whose sleeves stand on different rails.
 *
 * @param outcome what input and output do with both engaged: {@code drives}, {@code neutral}, {@code locked},
 *     {@code input-held} or {@code output-held}
 * @param preventedBy ids of the interlock pieces that keep the rails apart
 */
public record ConflictJson(
        List<String> gears, boolean canMeet, String outcome, List<String> preventedBy, List<ReasonJson> because) {

    static List<ConflictJson> all(List<Conflict> conflicts) {
        return conflicts.stream().map(ConflictJson::of).toList();
    }

    private static ConflictJson of(Conflict conflict) {
        return new ConflictJson(
                conflict.gears(),
                conflict.canMeet(),
                Spelling.of(conflict.outcome()),
                conflict.preventedBy(),
                ReasonJson.all(conflict.because()));
    }
}
