package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.FitWording;

/**
 * The form at the parts counter, filled in as it was sent.
 *
 * @param boxes by layout
 * @param places of the box; empty where none is chosen
 */
record FitFormView(String set, String serial, List<GroupView> boxes, List<ChoiceView> places) {

    /** The boxes of one layout. */
    record GroupView(String name, List<ChoiceView> choices) {}

    /** Something to choose. */
    record ChoiceView(String value, String text, boolean chosen) {}

    /** @param chosen the boxes that are asked about; empty where none is chosen */
    static FitFormView of(FitRequest request, Collection<BuiltBox> all, List<BuiltBox> chosen) {
        return new FitFormView(
                request.set().orElse(""),
                request.serial().orElse(""),
                boxes(request.box(), all),
                places(request, chosen));
    }

    static List<GroupView> boxes(Optional<String> chosen, Collection<BuiltBox> all) {
        Map<Layout, List<ChoiceView>> groups = new LinkedHashMap<>();
        for (BuiltBox box : all) {
            Layout layout = box.layout();
            List<ChoiceView> group = groups.computeIfAbsent(
                    layout,
                    first -> new ArrayList<>(List.of(choice(layout.id(), layout.name() + ", any of them", chosen))));
            group.add(choice(box.build().id(), FitWording.of(box), chosen));
        }
        return groups.entrySet().stream()
                .map(entry -> new GroupView(entry.getKey().name(), entry.getValue()))
                .toList();
    }

    private static ChoiceView choice(String value, String text, Optional<String> chosen) {
        return new ChoiceView(
                value, text, chosen.filter(value::equalsIgnoreCase).isPresent());
    }

    /** Where something is known to stand, and every gear. */
    private static List<ChoiceView> places(FitRequest request, List<BuiltBox> chosen) {
        Set<String> ids = new LinkedHashSet<>();
        chosen.forEach(box -> ids.addAll(box.build().fitted().keySet()));
        return ids.stream()
                .map(id -> choice(id, chosen.get(0).fitted().nameOf(id), request.place()))
                .toList();
    }

    public boolean hasPlaces() {
        return !places.isEmpty();
    }
}
