package org.layshaft.engine.sound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.train.Connection.Joined;
import org.layshaft.engine.train.Connection.Seated;
import org.layshaft.engine.train.Train;

/** Bodies that are fixed on one another, and so turn as one whatever is engaged. */
final class RigidGroups {
    private final Map<String, String> carriers = new HashMap<>();
    private final Rates rates;

    private RigidGroups(Rates rates) {
        this.rates = rates;
        rates.connections(Seated.class).forEach(seated -> carriers.put(seated.body(), seated.carrier()));
        rates.connections(Joined.class).forEach(joined -> carriers.put(joined.wheel(), joined.halfShaft()));
    }

    /** By the body that carries the others, in the order of the train. */
    static Map<String, List<String>> of(Rates rates) {
        return new RigidGroups(rates).gathered();
    }

    private Map<String, List<String>> gathered() {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (String body : rates.train().bodies()) {
            if (!body.equals(Train.ROAD)) {
                List<String> group = groups.computeIfAbsent(root(body), root -> new ArrayList<>());
                if (!body.equals(root(body))) {
                    group.add(body);
                }
            }
        }
        return groups;
    }

    private String root(String body) {
        String root = body;
        while (carriers.containsKey(root)) {
            root = carriers.get(root);
        }
        return root;
    }
}
