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
 * at the facing end of a shaft in line with its own.
 */
final class SidesOutOfReach implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Coupling.all(layout)
                .forEach(coupling -> layout.gear(coupling.gear())
                        .ifPresent(gear -> layout.shaftOf(coupling.member().id())
                                .ifPresent(own -> new Reach(layout, coupling, gear, own, report).check())));
    }

    private record Reach(TypedLayout layout, Coupling coupling, TypedGear gear, TypedShaft own, Report report) {

        void check() {
            Optional<TypedShaft> other = layout.shaftOf(gear.id());
            if (other.isPresent() && other.get().equals(own)) {
                onOwnShaft();
            } else if (other.isEmpty() || other.get().held() || liesBeside(other.get())) {
                broken(
                        "'%s' is not in line with the shaft '%s': the sleeve cannot slide over its teeth."
                                .formatted(gear.id(), own.id()),
                        "Couple a gear on the same shaft or on a shaft in line with it.");
            } else {
                onShaftInLine(other.get());
            }
        }

        private void onOwnShaft() {
            if (gear.seat() != Seat.FREE) {
                broken(
                        "'%s' turns with its shaft anyway: there is nothing to couple.".formatted(gear.id()),
                        "If it turns on its shaft, give it \"free\": true.");
            } else if (neighbour().filter(gear::equals).isEmpty()) {
                broken(
                        "'%s' is not the next gear on the %s side of the sleeve."
                                .formatted(gear.id(), coupling.side().word()),
                        "Look at the order along the shaft, front to rear, and at the side.");
            }
        }

        private void onShaftInLine(TypedShaft other) {
            if (neighbour().isPresent()) {
                broken(
                        "'%s' stands between the sleeve and '%s' on another shaft."
                                .formatted(neighbour().get().id(), gear.id()),
                        "Only a sleeve at the end of its shaft reaches over to the next.");
            }
            List<TypedItem> items = other.workingItems();
            TypedItem facing = items.get(coupling.side() == Side.FRONT ? items.size() - 1 : 0);
            if (!facing.equals(gear)) {
                report.doubtful(
                        coupling.pointer(),
                        "'%s' is not at the end of the shaft '%s' that faces the sleeve: '%s' is."
                                .formatted(gear.id(), other.id(), facing.id()),
                        gear.id(),
                        "Look at the order along that shaft, front to rear.");
            }
        }

        private Optional<TypedItem> neighbour() {
            return own.along().stream()
                    .filter(item -> item.id().equals(coupling.member().id()))
                    .findFirst()
                    .flatMap(item -> EffectiveSides.neighbour(item, coupling.side(), own));
        }

        private boolean liesBeside(TypedShaft other) {
            return Axes.of(layout).lieSideBySide(own.id(), other.id());
        }

        private void broken(String what, String advice) {
            report.broken(coupling.pointer(), what, gear.id(), advice);
        }
    }
}
