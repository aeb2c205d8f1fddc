package org.layshaft.web.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;

/** Layouts to draw, and how they move. */
final class Boxes {
    private static final List<String> DEMO = List.of("curlew", "plover", "avocet");
    private static final Reading ON_CLASS_PATH = PackReader.read(PackSource.onClassPath());

    private static final Reasoner REASONER = Reasoners.standard(ON_CLASS_PATH.knowledge());

    private Boxes() {}

    static Layout demo(String id) {
        return ON_CLASS_PATH.knowledge().layout(id).orElseThrow();
    }

    static Stream<Layout> demos() {
        return DEMO.stream().map(Boxes::demo);
    }

    /** Every layout of the packs on the class path: one or more of each family. */
    static Stream<Layout> families() {
        return ON_CLASS_PATH.knowledge().layouts().values().stream();
    }

    /** How it turns by the equations alone, with all sound. */
    static Motion solved(Layout layout, Stance stance) {
        return TrainSolver.solve(new TrainBuilder(layout, Changes.NONE).at(stance));
    }

    static View turning(Layout layout, Stance stance) {
        return new View(
                stance,
                Optional.of(solved(layout, stance)),
                Set.of(),
                Set.of(),
                part -> Optional.of("/?break=" + part),
                "box-");
    }

    /** Neutral, and each member by itself to each side where it engages something. */
    static List<Stance> each(Layout layout) {
        List<Stance> stances = new ArrayList<>(List.of(Stance.NEUTRAL));
        layout.members()
                .forEach(member ->
                        member.sides().keySet().forEach(side -> stances.add(Stance.NEUTRAL.with(member.part(), side))));
        return stances;
    }

    /** A layout from the text of a layout file, which must be sound. */
    static Layout typed(String text) {
        try {
            Path file = Files.createTempFile("typed", ".json");
            try {
                Files.writeString(file, text);
                Reading reading = PackReader.check(List.of(file));
                return reading.knowledge().layouts().values().stream()
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(reading.findings()));
            } finally {
                Files.delete(file);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The text of a demo layout's file. */
    static String text(String id) {
        try (InputStream in = Boxes.class.getResourceAsStream("/layshaft-pack/layouts/" + id + ".json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static Motion motion(Layout layout, Stance stance, Fault... faults) {
        return REASONER.motion(layout, List.of(faults), stance);
    }

    /** Neutral, and each rail pushed to each side. */
    static List<Stance> stances(Layout layout) {
        List<Stance> stances = new ArrayList<>(List.of(Stance.NEUTRAL));
        layout.all(Rail.class)
                .forEach(rail -> Stream.of(Side.values()).forEach(side -> {
                    Stance stance = Stance.NEUTRAL;
                    for (String fork : rail.forks()) {
                        stance = stance.with(layout.the(Fork.class, fork).member(), side);
                    }
                    stances.add(stance);
                }));
        return stances;
    }

    static View moving(Layout layout, Stance stance) {
        return marked(layout, stance, Set.of(), Set.of());
    }

    static View marked(Layout layout, Stance stance, Set<String> faulty, Set<String> meant) {
        return new View(
                stance,
                Optional.of(motion(layout, stance)),
                faulty,
                meant,
                part -> Optional.of("/?break=" + part),
                "box-");
    }

    /** Ids of the parts that have a figure; what lies about the gear train has none and is listed beside the drawing. */
    static SortedSet<String> figured(Layout layout) {
        return layout.parts().values().stream()
                .filter(part -> !(part instanceof Fitting))
                .map(Part::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
