package org.layshaft.kb.parts;

import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.typed.GearForms;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedGear;

/** A differential, its ring gear and its half-shafts. */
final class DifferentialParts {
    private DifferentialParts() {}

    static void add(TypedDifferential differential, GearForms forms, PartLedger ledger) {
        ledger.add(
                new Differential(
                        ledger.named(differential.id(), DefaultNames.words(differential.id()), differential.naming()),
                        differential.ringGear().map(TypedGear::id),
                        differential.on().map(Reference::id),
                        differential.sideIds(),
                        differential.limitedSlip()),
                differential.pointer());
        differential.ringGear().ifPresent(ring -> ShaftParts.addGear(ring, differential.id(), forms, ledger));
        if (differential.sides() instanceof TypedDifferential.Sides.HalfShafts halfShafts) {
            add(halfShafts, differential.id(), ledger);
        }
    }

    private static void add(TypedDifferential.Sides.HalfShafts halfShafts, String differential, PartLedger ledger) {
        for (Reference side : halfShafts.references()) {
            String words = DefaultNames.words(side.id());
            ledger.add(
                    new HalfShaft(
                            ledger.named(TypedDifferential.halfShaft(side.id()), words + " half-shaft"),
                            differential,
                            words + " wheel"),
                    side.pointer());
        }
    }
}
