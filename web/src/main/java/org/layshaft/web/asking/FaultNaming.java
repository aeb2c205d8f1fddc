package org.layshaft.web.asking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.words.Term;

/** A failure in words: {@code the 3-4 fork bent badly toward 4th}. */
public final class FaultNaming {
    private final KnowledgeBase knowledge;
    private final Box box;
    private final Names names;

    public FaultNaming(KnowledgeBase knowledge, Box box) {
        this.knowledge = knowledge;
        this.box = box;
        this.names = new Names(box.layout(), knowledge.words());
    }

    /** All failures, with what is not known of them in brackets. */
    public String said(List<Fault> faults) {
        List<String> each = new ArrayList<>();
        for (Fault fault : faults) {
            each.add(said(fault) + unknown(fault).map(what -> " (" + what + ")").orElse(""));
        }
        return Names.joined(each);
    }

    /** What is known of one failure. */
    public String said(Fault fault) {
        StringBuilder said = new StringBuilder(names.the(fault.part()) + " " + plain(fault));
        List<Map.Entry<String, String>> told = new ArrayList<>(fault.told().entrySet());
        told.sort(Map.Entry.comparingByKey(Comparator.comparingInt(this::order)));
        told.forEach(value -> said.append(" ").append(told(fault, value.getKey(), value.getValue())));
        return said.toString();
    }

    /** The mode as it is said: {@code splines worn}, where its name in packs is {@code splines-worn}. */
    private static String plain(Fault fault) {
        return fault.mode().replace('-', ' ');
    }

    /** What one would have to know: {@code which way and how far is not known}; empty where all is told. */
    public Optional<String> unknown(Fault fault) {
        return unknown(open(fault, knowledge.modeOf(box.layout(), fault)));
    }

    /** What is open of a failure, as the end of a sentence: {@code which way and how far the 3-4 fork is bent}. */
    public Optional<String> open(Fault fault) {
        Set<String> open = open(fault, knowledge.modeOf(box.layout(), fault));
        List<String> clauses = new ArrayList<>();
        if (open.remove("at")) {
            String stands = box.layout()
                    .find(Fork.class, fault.part())
                    .map(Fork::member)
                    .orElse(fault.part());
            clauses.add("where %s stands".formatted(names.the(stands)));
        }
        if (!open.isEmpty()) {
            clauses.add(0, "%s %s is %s".formatted(asked(open), names.the(fault.part()), plain(fault)));
        }
        return clauses.isEmpty() ? Optional.empty() : Optional.of(Names.joined(clauses));
    }

    /** Everything that may come to be said of what is not known of a failure. */
    public List<String> everythingUnknown(FailureMode mode) {
        Set<String> keys = mode.unlessTold().keySet();
        return Stream.concat(Stream.of(keys), keys.stream().map(Set::of))
                .flatMap(open -> unknown(open).stream())
                .toList();
    }

    private static Set<String> open(Fault fault, Optional<FailureMode> mode) {
        Set<String> open =
                new HashSet<>(mode.map(FailureMode::unlessTold).orElse(Map.of()).keySet());
        open.removeAll(fault.told().keySet());
        return open;
    }

    private Optional<String> unknown(Set<String> keys) {
        return keys.isEmpty() ? Optional.empty() : Optional.of(asked(keys) + " is not known");
    }

    private String asked(Set<String> keys) {
        return Names.joined(keys.stream()
                .sorted(Comparator.comparingInt(key -> -order(key)))
                .map(this::asked)
                .toList());
    }

    /** One thing that is told of a failure: {@code toward 4th}. */
    public String told(Fault fault, String key, String value) {
        return switch (key) {
            case "side" -> "toward " + side(fault, value);
            case "at" ->
                (box.layout().find(Fork.class, fault.part()).isPresent() ? "and left in " : "in ") + side(fault, value);
            case "place" -> "behind " + names.the(value);
            default -> term(value);
        };
    }

    private String side(Fault fault, String value) {
        return Sides.gearAt(box, fault.part(), value)
                .map(Names::gearName)
                .orElseGet(() -> value.equals("neutral") ? term(value) : "the " + term(value));
    }

    /** What is asked by something that can be told: {@code which way}. */
    public String asked(String key) {
        return switch (key) {
            case "side" -> "which way";
            case "extent" -> "how far";
            case "at" -> "where it was left";
            case "place" -> "where";
            default -> term(key);
        };
    }

    private int order(String key) {
        return List.of("extent", "side", "at", "place").indexOf(key);
    }

    private String term(String id) {
        return Optional.ofNullable(knowledge.words().told().get(id))
                .map(Term::name)
                .orElse(id);
    }
}
