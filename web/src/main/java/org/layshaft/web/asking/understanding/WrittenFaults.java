package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.web.asking.FaultUnderstanding;
import org.layshaft.web.asking.Saying;

/**
 * Reads failures in their written form, {@code 3-4-fork bent side=front}, several set apart by a semicolon, a plus, a
 * comma or an "and".
 */
final class WrittenFaults {
    private final BoxWords words;

    WrittenFaults(BoxWords words) {
        this.words = words;
    }

    /** The failures; a problem, where the form is kept but a value cannot be; empty where the form is not kept. */
    Optional<FaultUnderstanding> read(String written) {
        List<Fault> faults = new ArrayList<>();
        for (String piece : written.split("[;+,\n]| and ")) {
            if (piece.isBlank()) {
                continue;
            }
            String[] bits = piece.strip().split("\\s+");
            Optional<FailureMode> mode = mode(piece.strip(), bits[0]);
            if (mode.isEmpty()) {
                return Optional.empty();
            }
            Fault fault = Fault.of(bits[0], mode.get().name());
            for (String told : told(piece.strip(), fault)) {
                String[] pair = told.split("=", 2);
                if (pair.length < 2) {
                    return Optional.empty();
                }
                Optional<FaultUnderstanding> problem = check(fault, mode.get(), pair[0], pair[1]);
                if (problem.isPresent()) {
                    return problem;
                }
                fault = fault.with(pair[0], pair[1]);
            }
            faults.add(fault);
        }
        return faults.isEmpty() ? Optional.empty() : Optional.of(new FaultUnderstanding.Faults(faults));
    }

    private Optional<FailureMode> mode(String piece, String part) {
        return words.layout().find(Part.class, part).stream()
                .flatMap(found -> words.modesFor(found.id()))
                .filter(mode -> (piece + " ").startsWith(part + " " + mode.name() + " "))
                .findFirst();
    }

    private static List<String> told(String piece, Fault fault) {
        String rest = piece.substring(fault.written().length()).strip();
        return rest.isEmpty() ? List.of() : List.of(rest.split("\\s+"));
    }

    private Optional<FaultUnderstanding> check(Fault fault, FailureMode mode, String key, String value) {
        if (!mode.unlessTold().containsKey(key)) {
            String can = mode.unlessTold().isEmpty()
                    ? "nothing more can be told of it"
                    : "what can be told of it: "
                            + Names.joined(List.copyOf(mode.unlessTold().keySet()));
            return problem("'%s' cannot be told of '%s'; %s.".formatted(key, fault.written(), can), fault, mode);
        }
        List<String> values = mode.unlessTold().get(key);
        if (values.contains(FailureMode.ANY_PLACE)) {
            List<String> along = words.layout()
                    .find(Shaft.class, fault.part())
                    .map(Shaft::along)
                    .orElse(List.of());
            return along.contains(value)
                    ? Optional.empty()
                    : problem(
                            "%s=%s: there is no '%s' on the %s. Along it stand %s."
                                    .formatted(
                                            key,
                                            value,
                                            value,
                                            words.part(fault.part()).name(),
                                            Names.joined(along)),
                            fault,
                            mode);
        }
        return values.contains(value)
                ? Optional.empty()
                : problem("%s=%s: it can be %s.".formatted(key, value, Saying.either(values)), fault, mode);
    }

    private static Optional<FaultUnderstanding> problem(String says, Fault fault, FailureMode mode) {
        List<String> nearest = mode.unlessTold().entrySet().stream()
                .flatMap(asked -> asked.getValue().stream()
                        .filter(value -> !value.equals(FailureMode.ANY_PLACE))
                        .map(value -> fault.with(asked.getKey(), value).written()))
                .toList();
        return Optional.of(
                new FaultUnderstanding.Problem(says, nearest.isEmpty() ? List.of(fault.written()) : nearest));
    }
}
