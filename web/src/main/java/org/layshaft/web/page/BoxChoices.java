package org.layshaft.web.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.FitWording;
import org.layshaft.web.page.FitFormView.ChoiceView;

/** Every layout, and every build whose parts are known, to choose from. */
record BoxChoices(Desk desk) {

    List<ChoiceView> all(Optional<String> chosen) {
        Stream<ChoiceView> layouts =
                desk.knowledge().layouts().values().stream().map(layout -> choice(layout.id(), name(layout), chosen));
        Stream<ChoiceView> builds = desk.parts().counter().boxes().values().stream()
                .map(box -> choice(box.build().id(), FitWording.of(box), chosen));
        Map<String, ChoiceView> all = new LinkedHashMap<>();
        Stream.concat(layouts, builds).forEach(each -> all.putIfAbsent(each.value(), each));
        return List.copyOf(all.values());
    }

    private static String name(Layout layout) {
        return layout.name() + ", as the layout has it";
    }

    private static ChoiceView choice(String value, String text, Optional<String> chosen) {
        return new ChoiceView(
                value, text, chosen.filter(value::equalsIgnoreCase).isPresent());
    }
}
