package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;
import org.layshaft.web.asking.Saying;

/**
 * Why a stance does what it does: each thing engaged is let go in turn, and what then changes is told. What holds the box
 * is the least of what is engaged that still holds it by itself.
 */
final class WhyByHand {
    private final Reasoner reasoner;
    private final Layout layout;
    private final List<Fault> faults;
    private final Names names;
    private final Places places;

    WhyByHand(Reasoner reasoner, Layout layout, Names names, List<Fault> faults) {
        this.reasoner = reasoner;
        this.layout = layout;
        this.names = names;
        this.faults = faults;
        this.places = new Places(layout, names);
    }

    List<String> says(Stance stance, Motion motion) {
        return switch (motion.outcome()) {
            case DRIVES -> driving(stance, motion);
            case NEUTRAL ->
                List.of(
                        stance.engaged().isEmpty()
                                ? "No drive: nothing is engaged."
                                : "No drive: input and output can turn without each other. Engaged %s only %s."
                                        .formatted(stance.engaged().size() == 1 ? "is" : "are", engaged(stance)));
            case LOCKED -> held(stance, motion.outcome(), "Locked: input and output can only stand still.");
            case INPUT_HELD -> held(stance, motion.outcome(), "The input is held: it can only stand still.");
            case OUTPUT_HELD -> held(stance, motion.outcome(), "The output is held: it can only stand still.");
        };
    }

    private List<String> driving(Stance stance, Motion motion) {
        List<String> says = new ArrayList<>();
        Fraction ratio = motion.ratio().orElseThrow();
        says.add("It drives%s, %s turns of the input for one of the output."
                .formatted(ratio.signum() < 0 ? ", the output the other way than the input" : "", said(ratio)));
        List<String> agreeing = new ArrayList<>();
        List<String> idle = new ArrayList<>();
        stance.engaged().forEach((member, side) -> {
            Motion without = motion(without(stance, member));
            if (without.ratio().equals(motion.ratio())) {
                (without.carrying().equals(motion.carrying()) ? idle : agreeing).add(places.standing(member, side));
            }
        });
        if (agreeing.size() > 1) {
            says.add(
                    "%s agree: with either of them let go the ratio is the same, so they turn together and nothing locks."
                            .formatted(Saying.sentence(Names.joined(agreeing))));
        }
        idle.forEach(
                one -> says.add("%s changes nothing: without it the same drives.".formatted(Saying.sentence(one))));
        return says;
    }

    private List<String> held(Stance stance, Outcome outcome, String first) {
        Stance least = least(stance, outcome);
        List<String> says = new ArrayList<>(List.of(first));
        if (least.engaged().isEmpty()) {
            says.add(
                    "Nothing that is engaged does that: it is held so with every sleeve in neutral, by what is supposed wrong.");
            return says;
        }
        if (least.engaged().size() == 1) {
            says.add("By %s alone, with what else is always tied.".formatted(engaged(least)));
            return says;
        }
        List<String> demands = new ArrayList<>();
        least.engaged()
                .forEach((member, side) -> demand(least, member)
                        .ifPresent(ratio -> demands.add("%s asks for %s turns of the input for one of the output%s"
                                .formatted(
                                        places.standing(member, side),
                                        said(ratio),
                                        ratio.signum() < 0 ? ", the other way" : ""))));
        if (demands.size() == least.engaged().size() && demands.size() == 2) {
            says.add("%s, and %s: one output shaft cannot turn at two speeds, so nothing turns."
                    .formatted(Saying.sentence(demands.get(0)), demands.get(1)));
        } else {
            says.add("What holds it is %s together: what the one ties can turn only if another is let go."
                    .formatted(engaged(least)));
            demands.forEach(demand -> says.add("By itself, " + demand + "."));
        }
        return says;
    }

    /** What this asks for, the others of the least being let go. */
    private Optional<Fraction> demand(Stance least, String member) {
        Stance alone = least;
        for (String other : least.engaged().keySet()) {
            if (!other.equals(member)) {
                alone = without(alone, other);
            }
        }
        return motion(alone).ratio();
    }

    private Stance least(Stance stance, Outcome outcome) {
        Stance least = stance;
        for (String member : stance.engaged().keySet()) {
            Stance fewer = without(least, member);
            if (motion(fewer).outcome() == outcome) {
                least = fewer;
            }
        }
        return least;
    }

    private Motion motion(Stance stance) {
        return reasoner.motion(layout, faults, stance);
    }

    private static Stance without(Stance stance, String member) {
        Map<String, Side> fewer = new TreeMap<>(stance.engaged());
        fewer.remove(member);
        return new Stance(fewer);
    }

    private String engaged(Stance stance) {
        return Names.joined(stance.engaged().entrySet().stream()
                .map(entry -> places.standing(entry.getKey(), entry.getValue()))
                .toList());
    }

    private static String said(Fraction ratio) {
        Fraction turns = ratio.absolute();
        String exact = turns.toString();
        return turns.denominator().bitLength() == 1 ? exact : "%s (%s)".formatted(Decimals.three(turns), exact);
    }
}
