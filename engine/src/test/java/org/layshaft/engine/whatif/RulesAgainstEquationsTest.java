package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.ShaftPiece;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/**
 * Rules and equations share no code beyond the facts, and must agree wherever they are asked the same. That each answer
 * holds them against each other by itself is part of what is tested: it never throws.
 */
class RulesAgainstEquationsTest {
    private static final int PAIRS = 600;

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover", "avocet"})
    void they_agree_about_every_single_fault(String id) {
        Layout layout = Bench.layout(id);
        List<Fault> faults = ToldFaults.of(layout);
        assertTrue(faults.size() > 50, () -> "there should be many faults: " + faults.size());
        faults.forEach(fault -> requireAgreement(layout, List.of(fault)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"curlew", "plover", "avocet"})
    void they_agree_about_pairs_of_faults_drawn_at_random(String id) {
        long seed = 8;
        Layout layout = Bench.layout(id);
        List<Fault> faults = ToldFaults.of(layout);
        Random random = new Random(seed);
        int answered = 0;
        for (int pair = 0; pair < PAIRS; pair++) {
            List<Fault> two =
                    List.of(faults.get(random.nextInt(faults.size())), faults.get(random.nextInt(faults.size())));
            answered += requireAgreement(layout, two) ? 1 : 0;
        }
        int most = answered;
        assertTrue(answered > PAIRS * 9 / 10, () -> "%d of %d answered, seed %d".formatted(most, PAIRS, seed));
    }

    @Test
    void a_gear_seized_beside_its_own_sleeve_is_driven_through_both() {
        GearVerdict third = Bench.gear(Bench.whatIf("curlew", "third seized"), "3");
        // by the equations the two share the load, by the rules the drive goes through one of them
        assertTrue(third.motion().carrying().containsAll(parts(third)), third.toString());
    }

    /** False where the two cannot be at once. */
    private static boolean requireAgreement(Layout layout, List<Fault> faults) {
        String told = faults.stream().map(Fault::written).collect(Collectors.joining("; ", layout.id() + ": ", ""));
        try {
            WhatIf answer = Bench.REASONER.whatIf(layout, faults);
            answer.gears().forEach(gear -> requireAgreement(layout, gear, told));
            return true;
        } catch (UnanswerableException refused) {
            assertEquals(2, Set.copyOf(faults).size(), told);
            assertTrue(refused.getMessage().startsWith("These faults cannot all be at once"), told);
            return false;
        } catch (RuntimeException broken) {
            throw new AssertionError(told, broken);
        }
    }

    private static void requireAgreement(Layout layout, GearVerdict gear, String told) {
        String where = told + ", gear " + gear.gear();
        if (gear.verdict() == Verdict.WORKS || gear.verdict() == Verdict.WORKS_WITH_NOTICE) {
            assertEquals(Outcome.DRIVES, gear.motion().outcome(), where);
            assertEquals(gear.ratio(), gear.motion().ratio().orElseThrow().absolute(), where);
            requirePath(layout, gear, where);
        } else if (gear.verdict() == Verdict.LOCKS) {
            assertTrue(
                    Set.of(Outcome.LOCKED, Outcome.INPUT_HELD, Outcome.OUTPUT_HELD)
                            .contains(gear.motion().outcome()),
                    where);
        } else {
            assertEquals(Verdict.LOST, gear.verdict(), where);
            boolean drives = gear.motion().outcome() == Outcome.DRIVES;
            assertTrue(drives || gear.motion().outcome() == Outcome.NEUTRAL, where);
        }
    }

    private static void requirePath(Layout layout, GearVerdict gear, String where) {
        Set<String> carrying = partsOf(layout, gear.motion().carrying());
        Set<String> path = parts(gear);
        if (where.contains("seized")) {
            assertTrue(carrying.containsAll(path), where);
        } else {
            assertEquals(carrying, path, where);
        }
        gear.path()
                .forEach(step ->
                        assertEquals(gear.motion().speedOf(step.part()).orElse(step.speed()), step.speed(), where));
        Fraction last = gear.path().get(gear.path().size() - 1).speed();
        assertEquals(gear.motion().ratio().orElseThrow().inverse(), last, where);
    }

    private static Set<String> parts(GearVerdict gear) {
        return gear.path().stream().map(PathStep::part).collect(Collectors.toSet());
    }

    /** Bodies as parts: the pieces of a cut shaft as that shaft, without the wheels, which are no parts of the box. */
    private static Set<String> partsOf(Layout layout, Set<String> bodies) {
        return bodies.stream()
                .map(ShaftPiece::shaftOf)
                .filter(body -> layout.find(Part.class, body).isPresent())
                .collect(Collectors.toSet());
    }
}
