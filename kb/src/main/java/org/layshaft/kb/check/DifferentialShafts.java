package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** A differential is driven by one turning shaft and turns two others, each of which leads somewhere. */
final class DifferentialShafts implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Map<String, String> sideOf = new HashMap<>();
        for (TypedDifferential differential : layout.differentials()) {
            differential.on().ifPresent(on -> checkTurns(on, layout, report));
            if (differential.sides() instanceof TypedDifferential.Sides.Shafts shafts) {
                shafts.references().forEach(side -> checkSide(side, differential, sideOf, layout, report));
            }
        }
    }

    private static void checkSide(
            Reference side,
            TypedDifferential differential,
            Map<String, String> sideOf,
            TypedLayout layout,
            Report report) {
        checkTurns(side, layout, report);
        if (differential.on().filter(on -> on.id().equals(side.id())).isPresent()) {
            report.broken(
                    side.pointer(),
                    "'%s' drives the case of the differential '%s' and is a side of it: it could not even out anything."
                            .formatted(side.id(), differential.id()),
                    side.id(),
                    "Name two shafts other than the one that the case is fixed 'on'.");
        }
        String before = sideOf.putIfAbsent(side.id(), differential.id());
        if (before != null) {
            report.broken(
                    side.pointer(),
                    "'%s' is a side of two differentials, '%s' and '%s'."
                            .formatted(side.id(), before, differential.id()),
                    side.id(),
                    "Give each differential two shafts of its own, and let gears or a differential join them.");
        }
        layout.shaft(side.id())
                .filter(shaft -> leadsNowhere(shaft, layout))
                .ifPresent(shaft -> report.doubtful(
                        side.pointer(),
                        "The side '%s' of the differential '%s' leads nowhere: the other side can then drive nothing either."
                                .formatted(side.id(), differential.id()),
                        side.id(),
                        "Put a gear on it, or name it as an 'output'."));
    }

    private static void checkTurns(Reference mention, TypedLayout layout, Report report) {
        if (layout.shaft(mention.id()).filter(TypedShaft::held).isPresent()) {
            report.broken(
                    mention.pointer(),
                    "The shaft '%s' of a differential is held.".formatted(mention.id()),
                    mention.id(),
                    "Take \"held\" from it, or name a shaft that turns.");
        }
    }

    private static boolean leadsNowhere(TypedShaft shaft, TypedLayout layout) {
        List<Reference> wayOut = layout.effectiveOutputs();
        return shaft.workingItems().isEmpty()
                && wayOut.stream().noneMatch(end -> end.id().equals(shaft.id()))
                && layout.takeOffs().stream().noneMatch(end -> end.id().equals(shaft.id()))
                && layout.joins().stream()
                        .noneMatch(join -> join.from().id().equals(shaft.id())
                                || join.to().id().equals(shaft.id()))
                && layout.differentials().stream()
                        .flatMap(differential -> differential.on().stream())
                        .noneMatch(on -> on.id().equals(shaft.id()))
                && layout.shafts().stream()
                        .flatMap(each -> each.carriedBy().stream())
                        .noneMatch(carrier -> carrier.id().equals(shaft.id()));
    }
}
