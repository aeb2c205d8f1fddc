package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** The drive enters by one turning shaft and leaves by others, or by half-shafts, by each in one way. */
final class InputAndOutput implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Set<String> halfShafts = layout.halfShafts().stream().map(Reference::id).collect(Collectors.toSet());
        checkShaft(layout.input(), "input", "enters", layout, report);
        Map<String, Reference> ways = new HashMap<>();
        for (Reference output : layout.effectiveOutputs()) {
            if (!halfShafts.contains(output.id())) {
                checkWayOut(output, "output", layout, report);
            }
            if (!layout.outputs().isEmpty()) {
                checkOnce(output, "The drive leaves by '%s' twice.", ways, report);
            }
        }
        for (Reference takeOff : layout.takeOffs()) {
            checkWayOut(takeOff, "take_off", layout, report);
            checkOnce(takeOff, "'%s' is an output and a take-off at once.", ways, report);
        }
    }

    private static void checkOnce(Reference way, String what, Map<String, Reference> ways, Report report) {
        if (ways.putIfAbsent(way.id(), way) != null) {
            report.broken(way.pointer(), what.formatted(way.id()), way.id(), "Take it out here or there.");
        }
    }

    private static void checkWayOut(Reference end, String key, TypedLayout layout, Report report) {
        checkShaft(end, key, "leaves", layout, report);
        if (layout.input().id().equals(end.id())) {
            report.broken(
                    end.pointer(),
                    "The drive enters and leaves by the same shaft.",
                    end.id(),
                    "Name two shafts; without them the ids input and output are meant.");
        }
    }

    private static void checkShaft(Reference end, String key, String does, TypedLayout layout, Report report) {
        Optional<TypedShaft> shaft = layout.shaft(end.id());
        List<String> ids = layout.shafts().stream().map(TypedShaft::id).toList();
        if (shaft.isEmpty()) {
            report.broken(
                    end.pointer(),
                    "There is no shaft '%s' that the drive %s by.".formatted(end.id(), does),
                    end.id(),
                    "Give the shaft that id, or name the shaft with '%s'. %s"
                            .formatted(key, Nearest.advice(end.id(), ids)));
        } else if (shaft.get().held()) {
            report.broken(
                    end.pointer(),
                    "The drive %s by the shaft '%s', but that is held.".formatted(does, end.id()),
                    end.id(),
                    "Take \"held\" from it, or name another shaft with '%s'.".formatted(key));
        }
    }
}
