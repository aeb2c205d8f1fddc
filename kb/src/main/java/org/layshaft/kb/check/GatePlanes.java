package org.layshaft.kb.check;

import java.util.List;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;

/** The planes of the gate are the rails, each once. */
final class GatePlanes implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        layout.selectors().forEach(selector -> check(selector, report));
    }

    private static void check(TypedSelector selector, Report report) {
        List<String> rails = selector.rails().stream().map(TypedRail::base).toList();
        List<Reference> planes = selector.gate();
        planes.stream()
                .filter(plane -> !rails.contains(plane.id()))
                .forEach(plane -> report.broken(
                        plane.pointer(),
                        "The gate has a plane '%s', but there is no such rail.".formatted(plane.id()),
                        plane.id(),
                        Nearest.advice(plane.id(), rails)));
        rails.stream()
                .filter(rail -> planes.stream().noneMatch(plane -> plane.id().equals(rail)))
                .forEach(rail -> report.broken(
                        Pointers.child(selector.pointer(), "gate"),
                        "The lever cannot reach the rail '%s': the gate has no plane for it.".formatted(rail),
                        rail,
                        "Add it to the 'gate', or leave 'gate' out to have the order of the rails."));
    }
}
