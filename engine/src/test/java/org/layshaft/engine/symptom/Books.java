package org.layshaft.engine.symptom;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.train.Boxes;

/** Fault dictionaries of Saltmarsh, each made once. */
final class Books {
    static final Reasoner REASONER = Reasoners.standard(Boxes.knowledge());

    private static final Map<String, FaultDictionary> BY_ID = new ConcurrentHashMap<>();

    private Books() {}

    static FaultDictionary of(String layout) {
        return BY_ID.computeIfAbsent(layout, id -> FaultDictionary.of(Boxes.knowledge(), REASONER.box(Boxes.the(id))));
    }
}
