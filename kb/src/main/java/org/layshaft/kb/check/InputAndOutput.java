package org.layshaft.kb.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** The drive enters by one turning shaft and leaves by others, or by half-shafts. */
final class InputAndOutput implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        checkShaft(layout.input(), "enters", layout, report);
        layout.effectiveOutputs().stream()
                .filter(output -> !isHalfShaft(output, layout))
                .forEach(output -> checkOutput(output, layout, report));
        layout.takeOffs().forEach(takeOff -> checkOutput(takeOff, layout, report));
    }

    private static boolean isHalfShaft(Reference output, TypedLayout layout) {
        return layout.differentials().stream()
                .flatMap(differential -> differential.sideIds().stream())
                .anyMatch(side -> side.equals(output.id()) || side.equals(output.id() + "-half-shaft"));
    }

    private static void checkOutput(Reference output, TypedLayout layout, Report report) {
        checkShaft(output, "leaves", layout, report);
        if (layout.input().id().equals(output.id())) {
            report.broken(
                    output.pointer(),
                    "The drive enters and leaves by the same shaft.",
                    output.id(),
                    "Name two shafts; without them the ids input and output are meant.");
        }
    }

    private static void checkShaft(Reference end, String does, TypedLayout layout, Report report) {
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
