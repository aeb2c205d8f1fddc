package org.layshaft.web.desk;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.Torques;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;

/**
 * Keeps what was found out last, since who steps through the gears asks the same again and again. Thread-safe: a finding
 * follows from its layout and faults alone, so it does not matter who found it first.
 */
final class RememberingReasoner implements Reasoner {
    private static final int KEPT = 64;

    private record Supposed(String layout, List<Fault> faults) {}

    private final Reasoner reasoner;
    private final Map<Supposed, WhatIf> known = Collections.synchronizedMap(new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Supposed, WhatIf> eldest) {
            return size() > KEPT;
        }
    });

    RememberingReasoner(Reasoner reasoner) {
        this.reasoner = reasoner;
    }

    @Override
    public Box box(Layout layout) {
        return reasoner.box(layout);
    }

    @Override
    public WhatIf whatIf(Layout layout, List<Fault> faults) {
        Supposed supposed = new Supposed(layout.id(), List.copyOf(faults));
        WhatIf found = known.get(supposed);
        if (found == null) {
            found = reasoner.whatIf(layout, faults);
            known.put(supposed, found);
        }
        return found;
    }

    @Override
    public Motion motion(Layout layout, List<Fault> faults, Stance stance) {
        return reasoner.motion(layout, faults, stance);
    }

    @Override
    public Optional<Torques> torques(Layout layout, List<Fault> faults, Stance stance) {
        return reasoner.torques(layout, faults, stance);
    }

    @Override
    public String say(Layout layout, Fault fault) {
        return reasoner.say(layout, fault);
    }
}
