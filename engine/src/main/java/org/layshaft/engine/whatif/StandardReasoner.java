package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.Torques;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.fault.KnownFault;
import org.layshaft.engine.fault.KnownFaults;
import org.layshaft.engine.fault.Possibilities;
import org.layshaft.engine.fault.Served;
import org.layshaft.engine.fault.Sides;
import org.layshaft.engine.train.PassingTorques;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.engine.words.FaultWords;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/** Answers from the built-in rules and the equations. Thread-safe: it keeps only what never changes, the sound boxes. */
public final class StandardReasoner implements Reasoner {
    private final KnowledgeBase knowledge;
    private final Map<Layout, SoundBox> soundBoxes = new ConcurrentHashMap<>();

    public StandardReasoner(KnowledgeBase knowledge) {
        this.knowledge = knowledge;
    }

    @Override
    public Box box(Layout layout) {
        return sound(layout).box();
    }

    @Override
    public WhatIf whatIf(Layout layout, List<Fault> faults) {
        List<Fault> distinct = List.copyOf(new LinkedHashSet<>(faults));
        List<FailureMode> modes = new KnownFaults(knowledge, layout).modesOf(distinct);
        List<World> worlds = worlds(layout, distinct, modes);
        Gathering gathering = new Gathering(worlds, distinct, names(layout));
        return new WhatIf(
                layout.id(),
                distinct,
                sound(layout).box().gears().stream().map(gathering::gear).toList(),
                gathering.neutral(),
                gathering.conflicts(),
                cautions(modes));
    }

    @Override
    public Motion motion(Layout layout, List<Fault> faults, Stance stance) {
        return OfParts.only(TrainSolver.solve(train(layout, faults, stance)));
    }

    @Override
    public Optional<Torques> torques(Layout layout, List<Fault> faults, Stance stance) {
        return PassingTorques.of(train(layout, faults, stance));
    }

    private Train train(Layout layout, List<Fault> faults, Stance stance) {
        List<FailureMode> modes = new KnownFaults(knowledge, layout).modesOf(faults);
        List<Fault> way = new Possibilities(layout).of(faults, modes).get(0);
        FaultFacts facts = FaultFacts.of(layout, known(layout, way, modes));
        return new TrainBuilder(layout, facts.changes()).at(stance);
    }

    @Override
    public String say(Layout layout, Fault fault) {
        return words(layout).say(fault);
    }

    private List<World> worlds(Layout layout, List<Fault> faults, List<FailureMode> modes) {
        SoundBox sound = sound(layout);
        Names names = names(layout);
        List<World> worlds = new ArrayList<>();
        for (List<Fault> way : new Possibilities(layout).of(faults, modes)) {
            worlds.add(World.of(layout, sound, names, known(layout, way, modes), supposed(layout, faults, way)));
        }
        return worlds;
    }

    private List<KnownFault> known(Layout layout, List<Fault> way, List<FailureMode> modes) {
        List<KnownFault> known = new ArrayList<>();
        for (int i = 0; i < way.size(); i++) {
            known.add(new KnownFault(way.get(i), modes.get(i), say(layout, way.get(i))));
        }
        return known;
    }

    /** What a way supposes beyond what was told. */
    private String supposed(Layout layout, List<Fault> told, List<Fault> way) {
        return way.stream()
                .filter(fault -> !told.contains(fault))
                .map(fault -> say(layout, fault))
                .collect(Collectors.joining(", and "));
    }

    private static List<String> cautions(List<FailureMode> modes) {
        Set<String> cautions = new LinkedHashSet<>();
        modes.forEach(mode -> cautions.addAll(mode.cautions()));
        return List.copyOf(cautions);
    }

    private SoundBox sound(Layout layout) {
        return soundBoxes.computeIfAbsent(layout, SoundBox::of);
    }

    private Names names(Layout layout) {
        return new Names(layout, knowledge.words());
    }

    private FaultWords words(Layout layout) {
        return new FaultWords(
                layout,
                names(layout),
                (part, side) -> Served.by(layout, layout.the(Part.class, part)).stream()
                        .flatMap(served -> sound(layout)
                                .gearsAt(served.member(), Sides.of(side).orElseThrow())));
    }
}
