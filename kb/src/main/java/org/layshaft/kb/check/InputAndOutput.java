package org.layshaft.kb.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** The drive enters by one turning shaft and leaves by another, or by the differential. */
final class InputAndOutput implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        check(layout.input(), "enters", layout, report);
        if (layout.differential().isPresent()) {
            tellOutputBesideDifferential(layout, report);
        } else {
            check(layout.output(), "leaves", layout, report);
            if (layout.input().id().equals(layout.output().id())) {
                report.broken(
                        layout.output().pointer(),
                        "The drive enters and leaves by the same shaft.",
                        layout.output().id(),
                        "Name two shafts; without them the ids input and output are meant.");
            }
        }
    }

    /** What was typed is either the default, which says nothing, or a shaft that the drive does not leave by. */
    private static void tellOutputBesideDifferential(TypedLayout layout, Report report) {
        String output = layout.output().id();
        if (!output.equals("output")
                && !output.equals(layout.differential().orElseThrow().id())) {
            report.broken(
                    layout.output().pointer(),
                    "The drive leaves by the differential, not by '%s'.".formatted(output),
                    output,
                    "Leave 'output' out.");
        }
    }

    private static void check(Reference end, String does, TypedLayout layout, Report report) {
        Optional<TypedShaft> shaft = layout.shaft(end.id());
        List<String> ids = layout.shafts().stream().map(TypedShaft::id).toList();
        if (shaft.isEmpty()) {
            report.broken(
                    end.pointer(),
                    "There is no shaft '%s' that the drive %s by.".formatted(end.id(), does),
                    end.id(),
                    "Give the shaft that id, or name the shaft with '%s'. %s"
                            .formatted(end.pointer().substring(1), Nearest.advice(end.id(), ids)));
        } else if (shaft.get().held()) {
            report.broken(
                    end.pointer(),
                    "The drive %s by the shaft '%s', but that is held.".formatted(does, end.id()),
                    end.id(),
                    "Take \"held\" from it, or name another shaft with '%s'."
                            .formatted(end.pointer().substring(1)));
        }
    }
}
