package org.layshaft.engine.train;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The bodies that a force acts on, in the order in which power reaches them. */
final class PowerPath {
    private PowerPath() {}

    /** Bodies by id, nearest to the input first; one that is as near as another follows the order of the connections. */
    static Set<String> of(Train train, Balance.Torques torques) {
        List<Set<String>> loaded = train.connections().stream()
                .filter(torques::carries)
                .map(connection -> connection.equation().coefficients().keySet())
                .toList();
        Set<String> reached = new LinkedHashSet<>(List.of(train.input()));
        Deque<String> next = new ArrayDeque<>(reached);
        while (!next.isEmpty()) {
            String body = next.remove();
            loaded.stream()
                    .filter(ends -> ends.contains(body))
                    .flatMap(Set::stream)
                    .filter(reached::add)
                    .forEach(next::add);
        }
        return reached;
    }
}
