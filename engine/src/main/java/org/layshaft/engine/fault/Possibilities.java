package org.layshaft.engine.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;

/** The ways things may be, where something of a fault is not known. */
public final class Possibilities {
    /** More than this is no answer for a person to read. */
    static final int MOST = 64;

    private final Layout layout;
    private final Claims claims;

    public Possibilities(Layout layout) {
        this.layout = layout;
        this.claims = new Claims(layout);
    }

    /** Every way in which what is not told of these faults may be, in the order in which the modes list it. */
    public List<List<Fault>> of(List<Fault> faults, List<FailureMode> modes) {
        List<List<Fault>> ways = List.of(List.of());
        for (int i = 0; i < faults.size(); i++) {
            List<Fault> variants = variants(faults.get(i), modes.get(i));
            ways = ways.stream()
                    .flatMap(way -> variants.stream().map(variant -> with(way, variant)))
                    .filter(way -> claims.areAtOne(way, modes))
                    .distinct()
                    .toList();
            if (ways.isEmpty()) {
                throw new UnanswerableException("These faults cannot all be at once: %s. Leave out or change '%s'."
                        .formatted(
                                faults.subList(0, i + 1).stream()
                                        .map(fault -> "'" + fault.written() + "'")
                                        .collect(Collectors.joining(", ")),
                                faults.get(i).written()));
            }
            if (ways.size() > MOST) {
                throw new UnanswerableException(
                        "These faults leave more than %d possibilities. Say more about them, for instance %s."
                                .formatted(MOST, suggestion(faults, modes)));
            }
        }
        return ways;
    }

    /** The values that may be told of a fault under one heading: {@code side} to {@code front} and {@code rear}. */
    public List<String> valuesOf(Part part, FailureMode mode, String told) {
        List<String> listed = mode.unlessTold().get(told);
        if (listed.contains(FailureMode.ANY_PLACE)) {
            List<String> along = ((Shaft) part).along();
            return along.subList(0, Math.max(0, along.size() - 1));
        }
        if (told.equals("side")) {
            return listed.stream().filter(side -> canBeToward(part, side)).toList();
        }
        return told.equals("at")
                ? listed.stream().filter(at -> canStandAt(part, at)).toList()
                : listed;
    }

    /** Whether a part that has to do with one side only has to do with this one. */
    private boolean canBeToward(Part part, String word) {
        List<Served> served = Served.by(layout, part);
        return served.isEmpty()
                || served.stream()
                        .anyMatch(each -> each.side()
                                .filter(side -> !side.word().equals(word))
                                .isEmpty());
    }

    private boolean canStandAt(Part part, String at) {
        return at.equals("neutral")
                || Served.by(layout, part).stream()
                        .map(served -> layout.member(served.member()))
                        .anyMatch(member -> Stream.of(Side.values())
                                .anyMatch(side -> side.word().equals(at)
                                        && member.at(side).isPresent()));
    }

    private List<Fault> variants(Fault fault, FailureMode mode) {
        Part part = layout.the(Part.class, fault.part());
        List<Fault> variants = List.of(fault);
        for (String told : mode.unlessTold().keySet()) {
            if (!fault.told().containsKey(told)) {
                List<String> values = valuesOf(part, mode, told);
                variants = variants.stream()
                        .flatMap(variant -> values.stream().map(value -> variant.with(told, value)))
                        .toList();
            }
        }
        return variants;
    }

    private static List<Fault> with(List<Fault> way, Fault variant) {
        List<Fault> more = new ArrayList<>(way);
        more.add(variant);
        return List.copyOf(more);
    }

    private String suggestion(List<Fault> faults, List<FailureMode> modes) {
        for (int i = 0; i < faults.size(); i++) {
            Fault fault = faults.get(i);
            for (Map.Entry<String, List<String>> open :
                    modes.get(i).unlessTold().entrySet()) {
                if (!fault.told().containsKey(open.getKey())) {
                    Part part = layout.the(Part.class, fault.part());
                    return "'%s'"
                            .formatted(fault.with(
                                            open.getKey(),
                                            valuesOf(part, modes.get(i), open.getKey())
                                                    .get(0))
                                    .written());
                }
            }
        }
        return "which side";
    }
}
