package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;

/** Every layout of Saltmarsh, of whatever family: exact solver, certificates and singular values come to the same. */
class FamilyRoadsTest {
    /** Layouts with more stances than this are tried, with faults, in as many drawn ones. */
    private static final int MOST_STANCES = 4;

    static Stream<Layout> layouts() {
        return Boxes.every().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void soundInEveryStance(Layout layout) {
        tryStances(layout, Changes.NONE, Stances.all(layout));
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void withEverySingleChange(Layout layout) {
        SplittableRandom random = new SplittableRandom(7);
        SomeChanges.single(layout).forEach(changes -> tryStances(layout, changes, some(layout, random)));
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void withTwoChanges(Layout layout) {
        SplittableRandom random = new SplittableRandom(8);
        List<Changes> single = SomeChanges.single(layout);
        for (Changes one : single) {
            Changes other = single.get(random.nextInt(single.size()));
            tryStances(layout, SomeChanges.both(one, other), some(layout, random));
        }
    }

    private static List<Stance> some(Layout layout, SplittableRandom random) {
        List<Stance> stances = new ArrayList<>(Stances.all(layout));
        while (stances.size() > MOST_STANCES) {
            stances.remove(random.nextInt(stances.size()));
        }
        return stances;
    }

    private static void tryStances(Layout layout, Changes changes, List<Stance> stances) {
        TrainBuilder builder = new TrainBuilder(layout, changes);
        for (Stance stance : stances) {
            Roads roads = new Roads(builder.at(stance), layout.id() + " " + stance + " " + changes);
            roads.assertFloatingAgrees();
            roads.assertCertified();
        }
    }
}
