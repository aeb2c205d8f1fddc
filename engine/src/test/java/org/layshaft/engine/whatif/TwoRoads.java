package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** Requires that verdicts and paths, which are the rules', are what the equations say of the same motion. */
final class TwoRoads {
    private TwoRoads() {}

    /** False where the two cannot be at once. */
    static boolean about(Layout layout, List<Fault> faults) {
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

    static Set<String> parts(GearVerdict gear) {
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
