package org.layshaft.kb.parts;

import java.util.List;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedDifferential;

/** A differential, its ring gear and its half-shafts. */
final class DifferentialParts {
    private DifferentialParts() {}

    static void add(TypedDifferential differential, PartLedger ledger) {
        List<String> halfShafts =
                differential.halfShafts().stream().map(DifferentialParts::id).toList();
        ledger.add(
                new Differential(
                        ledger.named(differential.id(), DefaultNames.words(differential.id()), differential.naming()),
                        differential.ringGear().id(),
                        halfShafts),
                differential.pointer());
        ShaftParts.addGear(differential.ringGear(), differential.id(), ledger);
        for (Reference side : differential.halfShafts()) {
            String words = DefaultNames.words(side.id());
            ledger.add(
                    new HalfShaft(ledger.named(id(side), words + " half-shaft"), differential.id(), words + " wheel"),
                    side.pointer());
        }
    }

    private static String id(Reference side) {
        return side.id() + "-half-shaft";
    }
}
