package org.layshaft.kb.parts;

import java.util.Optional;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedLever;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;
import org.layshaft.kb.typed.WorkedBy;

/** What lies between the driver's hand and the rails. */
final class LeverFittings {
    private final PartLedger ledger;

    private LeverFittings(PartLedger ledger) {
        this.ledger = ledger;
    }

    static void add(TypedLayout layout, PartLedger ledger) {
        LeverFittings fittings = new LeverFittings(ledger);
        if (!layout.selector().rails().isEmpty()) {
            fittings.gearLever(layout.selector());
        }
        layout.levers().stream()
                .filter(lever -> !lever.selector().rails().isEmpty())
                .forEach(fittings::further);
    }

    private void gearLever(TypedSelector selector) {
        String pointer = selector.pointer();
        if (selector.drum().isEmpty()) {
            add(PartKind.SELECTOR_FINGER, "selector-finger", "selector finger", Lever.GEAR, pointer);
        } else {
            add(PartKind.SHIFT_DRUM, "shift-drum", "shift drum", Lever.GEAR, pointer);
        }
        if (!isPowered(selector)) {
            add(PartKind.GEAR_LEVER, "gear-lever", "gear lever", Lever.GEAR, pointer);
            add(PartKind.LEVER_BUSH, "lever-bush", "lever bush", Lever.GEAR, pointer);
            add(PartKind.LEVER_BOOT, "lever-boot", "lever boot", Lever.GEAR, pointer);
        }
        selector.lockOut()
                .ifPresent(lock -> ledger.add(
                        new Fitting(
                                ledger.named("lock-out", "reverse lock-out"),
                                PartKind.LOCK_OUT,
                                Optional.of(TypedRail.idOf(lock.rail().id())),
                                Optional.of(lock.side())),
                        pointer));
        between(selector, Lever.GEAR, "", "shift ");
    }

    private void further(TypedLever lever) {
        between(lever.selector(), lever.id(), lever.id() + "-", DefaultNames.words(lever.id()) + " ");
    }

    private void between(TypedSelector selector, String lever, String prefix, String words) {
        WorkedBy by = selector.workedBy().orElse(WorkedBy.RODS);
        String pointer = selector.pointer();
        switch (by) {
            case DIRECT -> {}
            case RODS -> add(PartKind.LINKAGE, prefix + "linkage", words + "linkage", lever, pointer);
            case CABLES -> {
                add(
                        PartKind.SHIFT_CABLE,
                        prefix + "shift-cable",
                        words.replace("shift ", "") + "shift cable",
                        lever,
                        pointer);
                if (selector.gate().size() > 1) {
                    add(
                            PartKind.GATE_CABLE,
                            prefix + "gate-cable",
                            words.replace("shift ", "") + "gate cable",
                            lever,
                            pointer);
                }
            }
            case AIR, ELECTRIC -> add(PartKind.ACTUATOR, prefix + "actuator", words + "actuator", lever, pointer);
        }
    }

    private static boolean isPowered(TypedSelector selector) {
        return selector.workedBy()
                .filter(by -> by == WorkedBy.AIR || by == WorkedBy.ELECTRIC)
                .isPresent();
    }

    private void add(PartKind kind, String id, String name, String lever, String pointer) {
        ledger.add(new Fitting(ledger.named(id, name), kind, Optional.of(lever), Optional.empty()), pointer);
    }
}
