package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.Derivation;
import org.layshaft.engine.rules.fact.Drive;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Mechanism;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Side;

/** One run of the rules over a layout with some faults, for several selections at once, with the equations beside it. */
final class Run {
    static final String NEUTRAL = "neutral";

    private final Layout layout;
    private final TrainBuilder train;
    private final Derivation derivation;
    private final Map<String, Map<String, Drive.Driven>> drivenByInput;
    private final Set<String> contradicted;
    private final Map<String, Motion> motions = new HashMap<>();

    private Run(Layout layout, TrainBuilder train, Derivation derivation) {
        this.layout = layout;
        this.train = train;
        this.derivation = derivation;
        this.drivenByInput = derivation
                .all(Drive.Driven.class)
                .filter(driven -> driven.source() == Drive.Source.INPUT)
                .collect(Collectors.groupingBy(
                        Drive.Driven::at, Collectors.toMap(Drive.Driven::body, Function.identity())));
        this.contradicted = derivation
                .all(Drive.Contradiction.class)
                .map(Drive.Contradiction::at)
                .collect(Collectors.toSet());
    }

    /**
     * @param selections what the lever selects; {@link #NEUTRAL} is added
     * @param more facts about the sound box, for verdicts; empty where no verdict is wanted
     */
    static Run of(Layout layout, FaultFacts faults, List<Selection> selections, List<Fact> more) {
        List<Fact> facts = new ArrayList<>();
        Stream.concat(Stream.of(Levers.neutral(layout)), selections.stream()).forEach(selection -> {
            facts.add(new Mechanism.Target(selection.at()));
            selection.pushes().forEach(push -> facts.add(pushed(layout, selection.at(), push)));
        });
        facts.addAll(new LayoutFacts(layout, faults).all());
        facts.addAll(more);
        return new Run(layout, new TrainBuilder(layout, faults.changes()), Derivation.from(facts));
    }

    private static Fact pushed(Layout layout, String at, Box.Push push) {
        return layout.find(Clutch.class, push.rail()).isPresent()
                ? new Mechanism.Closing(at, push.rail())
                : new Mechanism.Selecting(at, push.rail(), push.side());
    }

    Derivation derivation() {
        return derivation;
    }

    Stance stance(String at) {
        Map<String, Side> engaged = new TreeMap<>();
        derivation
                .all(Mechanism.Stands.class)
                .filter(stands -> stands.at().equals(at))
                .forEach(stands -> engaged.put(stands.member(), stands.side()));
        return new Stance(engaged);
    }

    /** How everything turns by the equations. */
    Motion motion(String at) {
        return motions.computeIfAbsent(at, key -> OfParts.only(TrainSolver.solve(train.at(stance(key)))));
    }

    /** How everything turns in neutral with the vehicle standing: the output stands, if the input leaves it free. */
    Motion standing() {
        Motion free = motion(NEUTRAL);
        if (free.outcome() != Motion.Outcome.NEUTRAL) {
            return free;
        }
        Map<String, Fraction> given = new LinkedHashMap<>();
        given.put(train.input(), Fraction.ONE);
        train.outputs().forEach(output -> given.put(output, Fraction.ZERO));
        return TrainSolver.speedsGiven(train.at(stance(NEUTRAL)), given)
                .map(speeds -> OfParts.only(new Motion(free.outcome(), speeds, free.carrying(), free.ratio())))
                .orElse(free);
    }

    /** Turns of the output for one of the input, by the rules; empty where it does not follow or the box locks. */
    Optional<Fraction> speedOfOutput(String at) {
        return isContradicted(at)
                ? Optional.empty()
                : train.outputs().stream()
                        .findFirst()
                        .flatMap(output -> driven(at, output))
                        .map(Drive.Driven::speed)
                        .filter(speed -> !speed.isZero());
    }

    boolean isContradicted(String at) {
        return contradicted.contains(at);
    }

    /** Whether the output can only stand, by the rules. */
    boolean isOutputHeld(String at) {
        return derivation
                .find(
                        Drive.Standing.class,
                        standing -> standing.at().equals(at) && train.outputs().contains(standing.body()))
                .isPresent();
    }

    /** Bodies from input to output, in order; empty where the output does not follow the input. */
    List<PathStep> path(String at) {
        if (speedOfOutput(at).isEmpty()) {
            return List.of();
        }
        Map<String, PathStep> steps = new LinkedHashMap<>();
        for (String output : train.outputs()) {
            chain(at, output).forEach(driven -> step(driven).ifPresent(step -> steps.putIfAbsent(step.part(), step)));
        }
        return List.copyOf(steps.values());
    }

    /** What drives what, from the input to this body. */
    List<Drive.Driven> chain(String at, String body) {
        List<Drive.Driven> chain = new ArrayList<>();
        Optional<Drive.Driven> link = driven(at, body);
        while (link.isPresent()) {
            chain.add(0, link.get());
            boolean atSource = link.get().connection().isEmpty();
            link = atSource ? Optional.empty() : driven(at, link.get().driver());
        }
        return chain;
    }

    List<String> outputs() {
        return train.outputs();
    }

    private Optional<Drive.Driven> driven(String at, String body) {
        return Optional.ofNullable(drivenByInput.getOrDefault(at, Map.of()).get(body));
    }

    private Optional<PathStep> step(Drive.Driven driven) {
        String part = ShaftPiece.shaftOf(driven.body());
        return Stream.of(part)
                .filter(id -> layout.find(Part.class, id).isPresent())
                .map(id -> new PathStep(id, driven.speed()))
                .findFirst();
    }
}
