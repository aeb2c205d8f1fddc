package org.layshaft.kb.check;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** What carries planets round turns, is carried by nothing that it carries, and gives the planets two gears to roll on. */
final class Carriers implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedShaft shaft : layout.shafts()) {
            shaft.carriedBy().ifPresent(carrier -> {
                if (shaft.held()) {
                    report.broken(
                            carrier.pointer(),
                            "The shaft '%s' cannot be carried round and held in the case.".formatted(shaft.id()),
                            carrier.id(),
                            "Take out \"carried_by\" or \"held\".");
                }
                checkCarrier(shaft, carrier, layout, report);
                checkMates(shaft, layout, report);
            });
        }
    }

    private static void checkCarrier(TypedShaft shaft, Reference carrier, TypedLayout layout, Report report) {
        if (layout.shaft(carrier.id()).filter(TypedShaft::held).isPresent()) {
            report.broken(
                    carrier.pointer(),
                    "'%s' carries '%s' round, but that is held.".formatted(carrier.id(), shaft.id()),
                    carrier.id(),
                    "Take \"held\" from the carrier; where it always stands still, its planets are idlers on spindles.");
        }
        Set<String> way = new LinkedHashSet<>();
        for (Optional<TypedShaft> next = Optional.of(shaft); next.isPresent(); next = carrierOf(next.get(), layout)) {
            if (!way.add(next.get().id())) {
                tellRing(shaft, carrier, way, report);
                return;
            }
        }
    }

    private static void tellRing(TypedShaft shaft, Reference carrier, Set<String> way, Report report) {
        report.broken(
                carrier.pointer(),
                way.size() == 1
                        ? "The shaft '%s' is said to carry itself.".formatted(shaft.id())
                        : "Shafts carry one another in a ring: %s.".formatted(String.join(", ", way)),
                carrier.id(),
                "Name the shaft that the planets' spindles are fixed in.");
    }

    private static Optional<TypedShaft> carrierOf(TypedShaft shaft, TypedLayout layout) {
        return shaft.carriedBy().flatMap(carrier -> layout.shaft(carrier.id()));
    }

    /** That there is none at all is told of each gear. */
    private static void checkMates(TypedShaft shaft, TypedLayout layout, Report report) {
        boolean gearsOnly = shaft.workingItems().stream().allMatch(TypedGear.class::isInstance);
        long meshes = layout.meshes().stream()
                .filter(mesh -> shaft.along().stream().anyMatch(item -> mesh.joins(item.id())))
                .count();
        if (gearsOnly && meshes == 1) {
            report.doubtful(
                    shaft.pointer(),
                    "The planets '%s' are in mesh with one gear only: they roll on it and drive nothing."
                            .formatted(shaft.id()),
                    shaft.id(),
                    "Say with 'meshes' what else they are in mesh with, a sun or a ring.");
        }
    }
}
