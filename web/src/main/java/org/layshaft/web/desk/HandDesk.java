package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.Torques;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

/**
 * Moves sleeves, sliding gears and inner clutches one by one, and says what comes of it: the motion by the equations, why
 * it locks where it does, and whether levers and interlock would let it. Thread-safe.
 */
public final class HandDesk {
    /** What is written for a stance in which nothing is engaged. */
    public static final String NOTHING = "none";

    private static final String SLEEVE = "-sleeve";

    private final Reasoner reasoner;

    HandDesk(Reasoner reasoner) {
        this.reasoner = reasoner;
    }

    /**
     * The stance as written: {@code 1-2-sleeve:front}, or {@code 1-2:front}, for each that is engaged. Throws {@link
     * BadInputException} where that cannot be.
     */
    public Stance stance(Layout layout, List<String> written) {
        Map<String, Side> engaged = new TreeMap<>();
        for (String each : written) {
            if (each.isBlank() || each.equals(NOTHING)) {
                continue;
            }
            int colon = each.lastIndexOf(':');
            if (colon < 0) {
                throw new BadInputException(
                        MALFORMED,
                        "\"%s\" does not say where the sleeve stands. Write its id, a colon and front, rear or neutral: \"%s:front\"."
                                .formatted(each, layout.members().isEmpty() ? "1-2-sleeve" : first(layout)));
            }
            ShiftMember member = member(layout, each.substring(0, colon));
            side(layout, member, each.substring(colon + 1)).ifPresent(side -> engaged.put(member.part(), side));
        }
        return new Stance(engaged);
    }

    /** As {@link #stance} reads it. */
    public static List<String> written(Stance stance) {
        return stance.engaged().isEmpty()
                ? List.of(NOTHING)
                : stance.engaged().entrySet().stream()
                        .map(entry -> entry.getKey() + ":" + entry.getValue().word())
                        .toList();
    }

    /**
     * The stance with this brought to another place; whatever else its rail moves goes along.
     *
     * @param side empty for neutral
     */
    public static Stance moved(Layout layout, Stance stance, String member, Optional<Side> side) {
        Map<String, Side> engaged = new TreeMap<>(stance.engaged());
        for (String each : onRailOf(layout, member)) {
            engaged.remove(each);
            side.filter(to -> layout.member(each).at(to).isPresent()).ifPresent(to -> engaged.put(each, to));
        }
        return new Stance(engaged);
    }

    private static List<String> onRailOf(Layout layout, String member) {
        return layout.forkOf(member)
                .map(fork -> layout.the(Rail.class, fork.rail()).forks().stream()
                        .map(each -> layout.the(Fork.class, each).member())
                        .toList())
                .orElse(List.of(member));
    }

    /** What comes of a stance with these faults. */
    public ByHand at(Layout layout, Names names, List<Fault> faults, WhatIf whatIf, Stance stance) {
        Motion motion = reasoner.motion(layout, faults, stance);
        Optional<Torques> torques = reasoner.torques(layout, faults, stance);
        List<String> says = new WhyByHand(reasoner, layout, names, faults).says(stance, motion);
        LeversByHand levers = new LeversByHand(layout, names, reasoner.box(layout), whatIf);
        List<String> against = levers.against(stance);
        return new ByHand(
                stance,
                motion,
                torques,
                says,
                against.isEmpty(),
                against.isEmpty() ? levers.allowing(stance) : against);
    }

    /** What input and output do in a stance. */
    public Motion.Outcome outcome(Layout layout, List<Fault> faults, Stance stance) {
        return reasoner.motion(layout, faults, stance).outcome();
    }

    /** What torques stand on everything. */
    public Optional<Torques> torques(Layout layout, List<Fault> faults, Stance stance) {
        return reasoner.torques(layout, faults, stance);
    }

    private static String first(Layout layout) {
        return layout.members().get(0).part();
    }

    private static ShiftMember member(Layout layout, String written) {
        return layout.members().stream()
                .filter(member -> member.part().equals(written) || member.part().equals(written + SLEEVE))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> all =
                            layout.members().stream().map(ShiftMember::part).toList();
                    return new BadInputException(
                            UNKNOWN,
                            all.isEmpty()
                                    ? "%s has nothing that could be moved; \"%s\" is none of its sleeves."
                                            .formatted(layout.name(), written)
                                    : "%s has no sleeve \"%s\". What can be moved in it: %s."
                                            .formatted(layout.name(), written, String.join(", ", all)),
                            all);
                });
    }

    private static Optional<Side> side(Layout layout, ShiftMember member, String written) {
        if (written.equals("neutral")) {
            return Optional.empty();
        }
        Side side = Arrays.stream(Side.values())
                .filter(each -> each.word().equals(written))
                .findFirst()
                .orElseThrow(() -> new BadInputException(
                        MALFORMED,
                        "\"%s:%s\" names no place. A sleeve stands at front, rear or neutral."
                                .formatted(member.part(), written)));
        if (member.at(side).isEmpty()) {
            throw new BadInputException(
                    UNKNOWN,
                    "The %s of %s engages nothing toward the %s. It can stand at: neutral, %s."
                            .formatted(
                                    layout.parts().get(member.part()).name(),
                                    layout.name(),
                                    side.word(),
                                    member.sides().keySet().stream()
                                            .map(Side::word)
                                            .collect(Collectors.joining(", "))));
        }
        return Optional.of(side);
    }
}
