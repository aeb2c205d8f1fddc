package org.layshaft.engine.train;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;

/** Every stance of every box of Saltmarsh, sound and with every single fault, by every road. */
class BoxRoadsTest {
    /** One in so many pairs of faults is tried in every stance; the graph road is tried on each. */
    private static final int ONE_IN = 20;

    static Stream<Layout> boxes() {
        return Boxes.all().stream();
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void soundInEveryStance(Layout box) {
        inEveryStance(box, Changes.NONE, Roads::assertAllAgree);
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void withEverySingleChangeInEveryStance(Layout box) {
        SomeChanges.single(box).forEach(changes -> inEveryStance(box, changes, Roads::assertAllAgree));
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void withTwoChanges(Layout box) {
        SplittableRandom random = new SplittableRandom(59);
        List<Changes> single = SomeChanges.single(box);
        for (Changes one : single) {
            for (Changes other : single) {
                if (random.nextInt(ONE_IN) == 0) {
                    inEveryStance(box, SomeChanges.both(one, other), Roads::assertGraphAgrees);
                }
            }
        }
    }

    private static void inEveryStance(Layout box, Changes changes, Consumer<Roads> check) {
        TrainBuilder builder = new TrainBuilder(box, changes);
        for (Stance stance : Stances.all(box)) {
            check.accept(new Roads(builder.at(stance), box.id() + " " + stance + " " + changes));
        }
    }
}
