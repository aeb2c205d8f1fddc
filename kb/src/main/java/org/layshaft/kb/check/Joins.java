package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedJoin;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** What is joined are two turning shafts, each by one join at either end. */
final class Joins implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Map<String, Reference> rears = new HashMap<>();
        Map<String, Reference> fronts = new HashMap<>();
        for (TypedJoin join : layout.joins()) {
            checkShaft(join.from(), layout, report);
            checkShaft(join.to(), layout, report);
            checkOnce(join.from(), "rear", rears, report);
            checkOnce(join.to(), "front", fronts, report);
            if (join.from().id().equals(join.to().id())) {
                report.broken(
                        join.pointer(),
                        "The shaft '%s' is joined to itself."
                                .formatted(join.to().id()),
                        join.to().id(),
                        "Name two shafts.");
            }
        }
    }

    private static void checkShaft(Reference end, TypedLayout layout, Report report) {
        Optional<TypedShaft> shaft = layout.shaft(end.id());
        List<String> ids = layout.shafts().stream().map(TypedShaft::id).toList();
        if (shaft.isEmpty()) {
            report.broken(
                    end.pointer(),
                    "There is no shaft '%s' to join.".formatted(end.id()),
                    end.id(),
                    Nearest.advice(end.id(), ids));
        } else if (shaft.get().held() || shaft.get().carriedBy().isPresent()) {
            report.broken(
                    end.pointer(),
                    "The shaft '%s' cannot be joined: it is %s."
                            .formatted(end.id(), shaft.get().held() ? "held" : "carried round"),
                    end.id(),
                    "Name a shaft that turns in its place.");
        }
    }

    private static void checkOnce(Reference end, String side, Map<String, Reference> ends, Report report) {
        Reference before = ends.putIfAbsent(end.id(), end);
        if (before != null) {
            report.broken(
                    end.pointer(),
                    "The %s end of '%s' is joined twice, first on line %d."
                            .formatted(side, end.id(), report.line(before.pointer())),
                    end.id(),
                    "Take one of the joins out, or name the other end of the shaft: 'from' is its rear, 'to' its front.");
        }
    }
}
