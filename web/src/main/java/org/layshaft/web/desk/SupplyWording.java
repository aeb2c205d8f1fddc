package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.layshaft.engine.fit.Supply;
import org.layshaft.engine.fit.Supply.End;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.Interchange;
import org.layshaft.kb.catalogue.Supersession;

/** What is supplied for a number, in sentences. */
public final class SupplyWording {
    private SupplyWording() {}

    /** Whether it is anything but supplied as it always was. */
    static boolean hasSomethingToSay(Supply supply) {
        return !supply.steps().isEmpty()
                || supply.end() != End.SUPPLIED
                || !supply.mayStandIn().isEmpty();
    }

    /** How it ends in a few words: {@code superseded by SM-4104}. */
    public static String brief(Supply supply) {
        String last = supply.last();
        boolean moved = !last.equals(supply.asked());
        return switch (supply.end()) {
            case SUPPLIED -> moved ? "superseded by %s".formatted(last) : "supplied under its own number";
            case WITHDRAWN ->
                moved ? "superseded by %s, which is withdrawn".formatted(last) : "withdrawn, with nothing in its place";
            case DEPENDS_ON_SERIAL -> "depends on the serial number of the box";
        };
    }

    /** Step by step. */
    public static List<String> says(Supply supply, Catalogue catalogue) {
        List<String> says = new ArrayList<>();
        supply.steps().forEach(step -> says.add(step(step)));
        switch (supply.end()) {
            case SUPPLIED ->
                says.add(
                        supply.steps().isEmpty()
                                ? "%s is supplied under its own number.".formatted(supply.asked())
                                : "%s is what is supplied today. It runs one way: nothing follows for %s in place of %s."
                                        .formatted(supply.last(), supply.asked(), supply.last()));
            case WITHDRAWN -> says.add("Nothing is supplied in its place.");
            case DEPENDS_ON_SERIAL ->
                says.add("From %s on it depends on the serial number of the box: %s"
                        .formatted(
                                supply.last(),
                                supply.depending().stream()
                                        .map(SupplyWording::step)
                                        .collect(Collectors.joining(" "))));
        }
        supply.mayStandIn().forEach(each -> says.add(standsIn(each)));
        replaced(supply.asked(), catalogue).forEach(says::add);
        return says;
    }

    private static String step(Supersession step) {
        String what = step.by()
                .map(by -> "%s is superseded by %s".formatted(step.was(), by))
                .orElse("%s is withdrawn".formatted(step.was()));
        return "%s, for %s%s.%s".formatted(what, step.serials().words(), with(step.with()), noted(step.note()));
    }

    private static String standsIn(Interchange interchange) {
        return "%s may stand in for %s%s; that says nothing of the other way round.%s"
                .formatted(
                        interchange.use(),
                        interchange.inPlaceOf(),
                        with(interchange.with()),
                        noted(interchange.note()));
    }

    private static List<String> replaced(String number, Catalogue catalogue) {
        return catalogue.supersessions().stream()
                .filter(each -> each.by().filter(number::equals).isPresent())
                .map(each -> "It supersedes %s, for %s%s."
                        .formatted(each.was(), each.serials().words(), with(each.with())))
                .toList();
    }

    private static String with(List<String> numbers) {
        return numbers.isEmpty() ? "" : ", together with " + String.join(" and ", numbers);
    }

    private static String noted(String note) {
        return note.isEmpty() ? "" : " " + note;
    }
}
