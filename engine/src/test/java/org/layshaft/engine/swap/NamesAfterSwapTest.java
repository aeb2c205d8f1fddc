package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

class NamesAfterSwapTest {

    @Test
    void whatWasThirdIsNowSecond() {
        Comparison crossed =
                Swaps.compare("curlew", Map.of("second", 34, "cluster-second", 37, "third", 43, "cluster-third", 28));
        Map<String, String> names = new LinkedHashMap<>();
        crossed.gears()
                .forEach(gear -> names.put(
                        gear.before().orElseThrow().gear(),
                        gear.after().orElseThrow().gear()));
        assertEquals(Map.of("1", "1", "2", "3", "3", "2", "4", "4", "5", "5", "R", "R"), names);
        assertFalse(crossed.namesHold());
        assertTrue(crossed.gateHolds());
        assertTrue(crossed.interlockHolds());
        assertEquals(
                Optional.of(Fraction.of(43 * 37, 28 * 34)), crossed.gear("3").factor());
        ConflictComparison firstAndThird = crossed.conflicts().stream()
                .filter(conflict -> conflict.before().gears().equals(List.of("1", "3")))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("1", "2"), firstAndThird.after().orElseThrow().gears());
    }

    /** Both countershafts are driven by one gear and drive another: at two ratios at once, everything stands. */
    @Test
    void oneOfTwoAlikeGearsLocksTheBox() {
        Comparison one = Swaps.compare("heron", Map.of("right-first", 26));
        assertEquals(24, one.gears().size());
        for (GearComparison gear : one.gears()) {
            assertEquals(Outcome.LOCKED, gear.outcome());
            assertEquals(Optional.empty(), gear.after());
            assertEquals(Optional.empty(), gear.factor());
        }
        assertFalse(one.gateHolds());
        assertFalse(one.interlockHolds());
    }

    /** An equal ratio on the other pair of the same rail: both names stay with the order of the ratios. */
    @Test
    void aGearThatComesToAnother() {
        Comparison alike = Swaps.compare("curlew", Map.of("fourth", 34, "cluster-fourth", 37));
        assertEquals(
                alike.gear("3").after().orElseThrow().ratio(),
                alike.gear("4").after().orElseThrow().ratio());
        assertEquals(
                Optional.of(Fraction.ONE),
                alike.gears().stream()
                        .flatMap(gear -> gear.after().stream())
                        .filter(gear -> gear.gear().equals("3"))
                        .findFirst()
                        .flatMap(gear -> gear.road().step().map(step -> step.ratio())));
    }
}
