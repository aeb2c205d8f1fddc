package org.layshaft.engine.fit.check;

import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;

/** The ring has a slot for each key of the hub. */
public final class KeySlots extends SameFact {
    public KeySlots() {
        super("key-slots", "Number of key slots", MeetingKind.KEYS, FactName.RING_SLOTS, FactName.HUB_SLOTS);
    }
}
