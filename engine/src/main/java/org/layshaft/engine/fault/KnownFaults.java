package org.layshaft.engine.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/** Looks up the modes of faults, and says everything that is wrong with them at once. */
public final class KnownFaults {
    private final KnowledgeBase knowledge;
    private final Layout layout;
    private final Possibilities possibilities;

    public KnownFaults(KnowledgeBase knowledge, Layout layout) {
        this.knowledge = knowledge;
        this.layout = layout;
        this.possibilities = new Possibilities(layout);
    }

    /** The mode of each fault, in order; throws {@link UnanswerableException} naming every fault that cannot be. */
    public List<FailureMode> modesOf(List<Fault> faults) {
        List<String> problems = new ArrayList<>();
        List<FailureMode> modes = new ArrayList<>();
        for (Fault fault : faults) {
            List<String> wrong = problemsOf(fault);
            problems.addAll(wrong);
            if (wrong.isEmpty()) {
                modes.add(knowledge.modeOf(layout, fault).orElseThrow());
            }
        }
        if (!problems.isEmpty()) {
            throw new UnanswerableException(String.join("\n", problems));
        }
        return modes;
    }

    private List<String> problemsOf(Fault fault) {
        if (layout.find(Part.class, fault.part()).isEmpty()) {
            return List.of(
                    "%s has no part '%s'. Its parts are listed by 'words'.".formatted(layout.name(), fault.part()));
        }
        Part part = layout.the(Part.class, fault.part());
        return knowledge
                .modeOf(layout, fault)
                .map(mode -> problemsOf(fault, part, mode))
                .orElseGet(() ->
                        List.of("The %s cannot be '%s'. %s".formatted(part.name(), fault.mode(), modesThatCan(part))));
    }

    private String modesThatCan(Part part) {
        List<FailureMode> modes = knowledge.failureModesOf(part);
        return modes.isEmpty()
                ? "No failure mode of it is known."
                : modes.stream()
                        .map(FailureMode::name)
                        .collect(Collectors.joining(", ", "It can be ", " (known failure modes)."));
    }

    private List<String> problemsOf(Fault fault, Part part, FailureMode mode) {
        List<String> problems = new ArrayList<>();
        for (String heading : mode.unlessTold().keySet()) {
            if (possibilities.valuesOf(part, mode, heading).isEmpty()) {
                return List.of("What follows from '%s' cannot be told: the %s has no %s that could be named."
                        .formatted(fault.written(), part.name(), heading));
            }
        }
        for (Map.Entry<String, String> told : fault.told().entrySet()) {
            if (!mode.unlessTold().containsKey(told.getKey())) {
                problems.add("For '%s %s' nothing is told by '%s'. %s"
                        .formatted(
                                part.name(),
                                mode.name(),
                                told.getKey(),
                                mode.unlessTold().isEmpty()
                                        ? "Leave it out."
                                        : "Say %s."
                                                .formatted(String.join(
                                                        " or ",
                                                        mode.unlessTold().keySet()))));
                continue;
            }
            List<String> values = possibilities.valuesOf(part, mode, told.getKey());
            if (!values.contains(told.getValue())) {
                problems.add("For '%s %s' the %s cannot be '%s'. It can be %s."
                        .formatted(
                                part.name(), mode.name(), told.getKey(), told.getValue(), String.join(", ", values)));
            }
        }
        return problems;
    }
}
