package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedLever;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;

/** Every lever has an id of its own, works something, and calls its places apart. */
final class LeverPlaces implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Set<String> ids = new HashSet<>(Set.of(Lever.GEAR));
        for (TypedLever lever : layout.levers()) {
            if (!ids.add(lever.id())) {
                report.broken(
                        lever.pointer(),
                        "There is another lever '%s'.".formatted(lever.id()),
                        lever.id(),
                        "Give it another id; '%s' is the gear lever.".formatted(Lever.GEAR));
            } else if (lever.selector().rails().isEmpty() && lever.clutches().isEmpty()) {
                report.broken(
                        lever.pointer(),
                        "The lever '%s' works nothing.".formatted(lever.id()),
                        lever.id(),
                        "Name its 'rails' or its 'clutches', or take it out.");
            } else {
                checkChoice(lever, places(lever, built.layout().levers()), report);
            }
        }
        layout.selectors().forEach(selector -> checkCalled(selector, report));
    }

    private static int places(TypedLever lever, Iterable<Lever> levers) {
        for (Lever one : levers) {
            if (one.id().equals(lever.id())) {
                return one.places().size() + (one.neutral() ? 1 : 0);
            }
        }
        return 0;
    }

    private static void checkChoice(TypedLever lever, int places, Report report) {
        if (places < 2) {
            report.doubtful(
                    lever.pointer(),
                    "The lever '%s' has nothing to choose between: %s."
                            .formatted(lever.id(), places == 0 ? "it has no place" : "it has one place only"),
                    lever.id(),
                    "Take out \"neutral\": false, or look at what its sleeves engage on either side.");
        }
    }

    private static void checkCalled(TypedSelector selector, Report report) {
        Map<String, String> first = new HashMap<>();
        selector.neutralCalled().ifPresent(name -> first.put(name, Pointers.child(selector.pointer(), "neutral")));
        for (TypedRail rail : selector.rails()) {
            rail.called().forEach((side, name) -> {
                String pointer = Pointers.child(rail.pointer(), side.word());
                String before = first.putIfAbsent(name, pointer);
                if (before != null) {
                    report.broken(
                            pointer,
                            "Two places of one lever are called '%s', the other on line %d."
                                    .formatted(name, report.line(before)),
                            name,
                            "Gears are called by their places: call the two apart.");
                }
            });
        }
    }
}
