package org.layshaft.kb.check;

import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedBearing;
import org.layshaft.kb.typed.TypedItem;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** A bearing in the bore of another shaft needs another shaft, and one in line with its own. */
final class PilotBearings implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Axes axes = Axes.of(layout);
        for (TypedShaft shaft : layout.shafts()) {
            for (TypedItem item : shaft.along()) {
                if (item instanceof TypedBearing bearing) {
                    bearing.in().ifPresent(in -> check(shaft.id(), in, axes, report));
                }
            }
        }
    }

    private static void check(String shaft, Reference in, Axes axes, Report report) {
        if (in.id().equals(shaft)) {
            tell(in, "A shaft cannot run in a bearing in its own bore.", report);
        } else if (axes.lieSideBySide(shaft, in.id())) {
            tell(
                    in,
                    "The shafts '%s' and '%s' lie side by side, since their gears mesh: neither can run in the other."
                            .formatted(shaft, in.id()),
                    report);
        }
    }

    private static void tell(Reference in, String what, Report report) {
        report.broken(
                in.pointer(), what, in.id(), "Name a shaft in line with this one, or leave 'in' out for the case.");
    }
}
