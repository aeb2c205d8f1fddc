package org.layshaft.kb.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.EffectiveSides;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedItem;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/**
 * Sleeves that couple what they cannot reach.
 *
 * <p>On its own shaft a sleeve couples the free gear next to it. Standing at the end of its shaft, it couples the gear
 * at the facing end of a shaft in line with its own. A ring with teeth inside is not in its way.
 */
final class SidesOutOfReach implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Axes axes = Axes.of(layout);
        Coupling.all(layout)
                .forEach(coupling -> item(coupling.to(), layout)
                        .ifPresent(to -> layout.shaftOf(coupling.member().id())
                                .ifPresent(own -> new Reach(axes, layout, coupling, to, own, report).check())));
    }

    /** The gear or dog ring; empty for a differential. */
    private static Optional<TypedItem> item(String id, TypedLayout layout) {
        return layout.gear(id)
                .map(TypedItem.class::cast)
                .or(() -> layout.shaftOf(id)
                        .flatMap(shaft -> shaft.along().stream()
                                .filter(item -> item.id().equals(id))
                                .findFirst()));
    }

    private record Reach(
            Axes axes, TypedLayout layout, Coupling coupling, TypedItem to, TypedShaft own, Report report) {

        void check() {
            Optional<TypedShaft> other = layout.shaftOf(to.id());
            if (other.isPresent() && other.get().equals(own)) {
                onOwnShaft();
            } else if (other.isEmpty() || other.get().held() && to instanceof TypedGear || liesBeside(other.get())) {
                broken(
                        "'%s' is not in line with the shaft '%s': the sleeve cannot slide over its teeth."
                                .formatted(to.id(), own.id()),
                        "Couple a gear on the same shaft or on a shaft in line with it.");
            } else {
                onShaftInLine(other.get());
            }
        }

        private void onOwnShaft() {
            if (!(to instanceof TypedGear gear) || gear.seat() != Seat.FREE) {
                broken(
                        "'%s' turns with its shaft anyway: there is nothing to couple.".formatted(to.id()),
                        to instanceof TypedGear
                                ? "If it turns on its shaft, give it \"free\": true."
                                : "Name dogs that stand in the case or on a shaft in line with this one.");
            } else if (neighbour().filter(to::equals).isEmpty()) {
                broken(
                        "'%s' is not the next gear on the %s side of the sleeve."
                                .formatted(to.id(), coupling.side().word()),
                        "Look at the order along the shaft, front to rear, and at the side.");
            }
        }

        private void onShaftInLine(TypedShaft other) {
            neighbour()
                    .filter(item -> !isRing(item))
                    .ifPresent(between -> broken(
                            "'%s' stands between the sleeve and '%s' on another shaft."
                                    .formatted(between.id(), to.id()),
                            "Only a sleeve at the end of its shaft reaches over to the next."));
            List<TypedItem> items = other.workingItems();
            TypedItem facing = items.get(coupling.side() == Side.FRONT ? items.size() - 1 : 0);
            if (to instanceof TypedGear && !facing.equals(to)) {
                report.doubtful(
                        coupling.pointer(),
                        "'%s' is not at the end of the shaft '%s' that faces the sleeve: '%s' is."
                                .formatted(to.id(), other.id(), facing.id()),
                        to.id(),
                        "Look at the order along that shaft, front to rear.");
            }
        }

        /** A ring with teeth inside surrounds what it meshes with, and may surround its sleeve. */
        private static boolean isRing(TypedItem item) {
            return item instanceof TypedGear gear && gear.internal();
        }

        private Optional<TypedItem> neighbour() {
            return own.along().stream()
                    .filter(item -> item.id().equals(coupling.member().id()))
                    .findFirst()
                    .flatMap(item -> EffectiveSides.neighbour(item, coupling.side(), own));
        }

        private boolean liesBeside(TypedShaft other) {
            return axes.lieSideBySide(own.id(), other.id());
        }

        private void broken(String what, String advice) {
            report.broken(coupling.pointer(), what, to.id(), advice);
        }
    }
}
