package org.layshaft.web.asking.answering;

import java.util.List;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.asking.Saying;

/** What the engine found, and the words to say it in. */
record Facts(Reasoner reasoner, Box box, WhatIf whatIf, Names names, FaultNaming faultWords) {

    boolean isSound() {
        return whatIf.faults().isEmpty();
    }

    GearVerdict gear(String name) {
        return whatIf.gear(name)
                .orElseThrow(() -> new UnanswerableException("%s has no gear '%s'. It has %s."
                        .formatted(
                                box.layout().name(),
                                name,
                                Saying.gears(whatIf.gears().stream()
                                        .map(GearVerdict::gear)
                                        .toList()))));
    }

    Box.DerivedGear soundGear(String name) {
        return box.gears().stream()
                .filter(gear -> gear.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Verdicts of these gears; of all, where none is named. */
    List<GearVerdict> gears(List<String> named) {
        return named.isEmpty() ? whatIf.gears() : named.stream().map(this::gear).toList();
    }
}
