package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Motion;

/**
 * Pairs of gears that the same pieces keep apart and that would do the same together.
 *
 * @param conflicts at least one
 */
public record PairGroup(List<Conflict> conflicts) {
    public PairGroup {
        conflicts = List.copyOf(conflicts);
    }

    /** Those pairs that can meet, or those that cannot, in groups. */
    public static List<PairGroup> of(List<Conflict> conflicts, boolean canMeet) {
        Map<List<Object>, List<Conflict>> groups = new LinkedHashMap<>();
        for (Conflict conflict : conflicts) {
            if (conflict.canMeet() == canMeet) {
                groups.computeIfAbsent(List.of(conflict.preventedBy(), conflict.outcome()), key -> new ArrayList<>())
                        .add(conflict);
            }
        }
        return groups.values().stream().map(PairGroup::new).toList();
    }

    /** {@code 1 and 3, 1 and 4}. */
    public String pairs() {
        return conflicts.stream()
                .map(conflict -> String.join(" and ", conflict.gears()))
                .collect(Collectors.joining(", "));
    }

    /** Ids of the pieces that keep the pairs apart; empty where nothing does. */
    public List<String> preventedBy() {
        return conflicts.get(0).preventedBy();
    }

    public Motion.Outcome outcome() {
        return conflicts.get(0).outcome();
    }
}
