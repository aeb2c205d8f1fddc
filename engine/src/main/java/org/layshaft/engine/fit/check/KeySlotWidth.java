package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** The slots of the ring take the keys, and let the ring turn by less than a tooth. */
public final class KeySlotWidth extends Check {
    public KeySlotWidth() {
        super("key-slot-width", "Width of the key slots", MeetingKind.KEYS);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held ring = judging.one();
        Held hub = judging.other();
        double ringMm = ring.number(FactName.RING_SLOT_MM);
        double hubMm = hub.number(FactName.HUB_SLOT_MM);
        double toothMm = Math.PI * ring.number(FactName.CLUTCHING_MM) / ring.number(FactName.CLUTCHING_TEETH);
        Figure wide = Figure.of(ring.name(), ringMm, Unit.MM);
        return judging.between(
                List.of(
                        wide,
                        Figure.of(hub.name(), hubMm, Unit.MM),
                        Figure.of("a tooth of the ring", toothMm, Unit.MM)),
                wide,
                hubMm,
                hubMm + toothMm,
                Limit.GEOMETRY);
    }
}
