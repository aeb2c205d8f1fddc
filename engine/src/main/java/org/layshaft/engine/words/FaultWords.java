package org.layshaft.engine.words;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Shaft;

/** A fault as a clause: {@code the 3-4 fork is bent badly toward the front (4th)}. */
public final class FaultWords {
    private final Layout layout;
    private final Names names;
    private final BiFunction<String, String, Stream<String>> gearsAt;

    /**
     * @param gearsAt the names of the gears that a part engages at a side, by the side's word; may be empty
     */
    public FaultWords(Layout layout, Names names, BiFunction<String, String, Stream<String>> gearsAt) {
        this.layout = layout;
        this.names = names;
        this.gearsAt = gearsAt;
    }

    public String say(Fault fault) {
        boolean several = layout.the(Part.class, fault.part()).kind().isPlural();
        return "%s %s %s".formatted(names.the(fault.part()), several ? "are" : "is", condition(fault));
    }

    private String condition(Fault fault) {
        List<String> words = new ArrayList<>();
        words.add(fault.mode().replace('-', ' '));
        words.addAll(details(fault));
        return String.join(" ", words);
    }

    private List<String> details(Fault fault) {
        List<String> details = new ArrayList<>();
        fault.told()
                .forEach((told, value) -> details.add(
                        switch (told) {
                            case "side" -> "toward the %s%s".formatted(value, gears(fault.part(), value));
                            case "at" ->
                                value.equals("neutral")
                                        ? "in neutral"
                                        : "to the %s%s".formatted(value, gears(fault.part(), value));
                            case "place" -> between(fault.part(), value);
                            default -> value;
                        }));
        return details;
    }

    private String gears(String part, String side) {
        List<String> gears = gearsAt.apply(part, side).map(Names::gearName).toList();
        return gears.isEmpty() ? "" : " (%s)".formatted(Names.joined(gears));
    }

    private String between(String shaft, String place) {
        List<String> along = layout.the(Shaft.class, shaft).along();
        int index = along.indexOf(place);
        return index + 1 < along.size()
                ? "between %s and %s".formatted(names.the(place), names.the(along.get(index + 1)))
                : "behind %s".formatted(names.the(place));
    }
}
