package org.layshaft.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.failure.Fault;

/**
 * What the page shows: all of it stands in its address.
 *
 * @param layout id of the layout
 * @param question the question as typed
 * @param gear name of the gear that is drawn, or {@link #NEUTRAL}
 * @param faults what is supposed besides the question, as written
 * @param part id of the part that is looked at
 * @param seen the diagnosis that led here, each observation as written
 * @param sight how it is drawn
 */
public record Address(
        Optional<String> layout,
        Optional<String> question,
        Optional<String> gear,
        List<String> faults,
        Optional<String> part,
        List<String> seen,
        Sight sight) {

    static final String NEUTRAL = "N";

    public Address {
        faults = List.copyOf(faults);
        seen = List.copyOf(seen);
    }

    /** Drawn as usual. */
    public Address(
            Optional<String> layout,
            Optional<String> question,
            Optional<String> gear,
            List<String> faults,
            Optional<String> part,
            List<String> seen) {
        this(layout, question, gear, faults, part, seen, Sight.USUAL);
    }

    /** A layout, sound, and nothing asked. */
    public static Address of(String layout) {
        return new Address(
                Optional.of(layout), Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of());
    }

    public Address inLayout(String other) {
        return new Address(Optional.of(other), question, gear, faults, part, seen, sight);
    }

    Address asking(String other) {
        return new Address(layout, Optional.of(other), Optional.empty(), faults, part, seen, sight.withNothingMoved());
    }

    Address withQuestion(String other) {
        return new Address(layout, Optional.of(other), gear, faults, part, seen);
    }

    Address inGear(String other) {
        return new Address(layout, question, Optional.of(other), faults, part, seen, sight.withNothingMoved());
    }

    Address at(String other) {
        return new Address(layout, question, gear, faults, Optional.of(other), seen, sight);
    }

    Address atNoPart() {
        return new Address(layout, question, gear, faults, Optional.empty(), seen, sight);
    }

    /** The question dropped, and these faults supposed instead of those it and the address suppose. */
    Address supposing(List<Fault> others) {
        List<String> written = others.stream().map(Fault::written).toList();
        return new Address(layout, Optional.empty(), gear, written, part, seen, sight);
    }

    /** The same question, with these faults supposed besides. */
    Address besides(List<Fault> others) {
        List<String> written = others.stream().map(Fault::written).toList();
        return new Address(layout, question, gear, written, part, seen, sight);
    }

    /** The same, reached from a diagnosis. */
    Address withSeen(List<String> observations) {
        return new Address(layout, question, gear, faults, part, observations, sight);
    }

    /** The sleeves as they were set by hand, whatever gear was drawn. */
    Address moved(List<String> sleeves) {
        return new Address(layout, question, Optional.empty(), faults, part, seen, sight.moved(sleeves));
    }

    /** The same, drawn otherwise. */
    Address drawn(Sight other) {
        return new Address(layout, question, gear, faults, part, seen, other);
    }

    /** The drawing as a file. */
    String file() {
        return "/drawing/" + layout.orElseThrow() + ".svg"
                + query(Stream.of(
                        pairs("q", question.stream()),
                        pairs("gear", gear.stream()),
                        pairs("fault", faults.stream()),
                        pairs("part", part.stream()),
                        sight.pairs()));
    }

    /** All that the address says but for what is drawn how, by name and value. */
    List<FieldView> withoutSight() {
        List<FieldView> pairs = new ArrayList<>();
        layout.ifPresent(value -> pairs.add(new FieldView("layout", value)));
        question.ifPresent(value -> pairs.add(new FieldView("q", value)));
        gear.ifPresent(value -> pairs.add(new FieldView("gear", value)));
        faults.forEach(value -> pairs.add(new FieldView("fault", value)));
        part.ifPresent(value -> pairs.add(new FieldView("part", value)));
        seen.forEach(value -> pairs.add(new FieldView("seen", value)));
        return pairs;
    }

    /** As a link: {@code /?layout=curlew&gear=3}. */
    String link() {
        return "/"
                + query(Stream.of(
                        pairs("layout", layout.stream()),
                        pairs("q", question.stream()),
                        pairs("gear", gear.stream()),
                        pairs("fault", faults.stream()),
                        pairs("part", part.stream()),
                        pairs("seen", seen.stream()),
                        sight.pairs()));
    }

    /** Where the API gives this answer. */
    String api() {
        String path = question.isPresent() ? "/api/ask" : "/api/gears";
        return path
                + query(Stream.of(
                        pairs("layout", layout.stream()),
                        pairs("q", question.stream()),
                        pairs("fault", faults.stream())));
    }

    /** Where the API gives the table of what is noticed with what is supposed. */
    String faultsApi() {
        return "/api/faults" + query(Stream.of(pairs("layout", layout.stream()), pairs("fault", faults.stream())));
    }

    private static String query(Stream<Stream<String>> pairs) {
        List<String> all = pairs.flatMap(each -> each).toList();
        return all.isEmpty() ? "" : "?" + String.join("&", all);
    }

    static Stream<String> pairs(String name, Stream<String> values) {
        return values.map(value ->
                name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8).replace("%3A", ":"));
    }
}
