package org.layshaft.engine.families;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;

/** What the rules make of every layout of Saltmarsh; each gear is held against the equations on the way. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FamilyGearsTest {
    private final Reasoner reasoner = Reasoners.standard(Boxes.knowledge());

    Stream<Layout> layouts() {
        return Boxes.every().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void every_sound_gear_works_and_is_called_by_a_name_of_its_own(Layout layout) {
        List<String> names =
                reasoner.box(layout).gears().stream().map(Box.DerivedGear::name).toList();
        assertFalse(names.isEmpty());
        assertEquals(names.size(), Set.copyOf(names).size());
        assertEquals(
                List.of(),
                reasoner.whatIf(layout, List.of()).gears().stream()
                        .filter(gear -> gear.verdict() != Verdict.WORKS)
                        .map(GearVerdict::gear)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            turnstone | 1, 2, 3, 4, 5, 6
            phalarope     | 1, 2, 3, 4, R
            """)
    void gears_are_called(String layout, String names) {
        assertEquals(
                names,
                String.join(
                        ", ",
                        reasoner.box(Boxes.the(layout)).gears().stream()
                                .map(Box.DerivedGear::name)
                                .toList()));
    }
}
