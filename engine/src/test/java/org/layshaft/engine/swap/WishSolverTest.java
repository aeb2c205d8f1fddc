package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

class WishSolverTest {
    private static final Layout CURLEW = Boxes.the("curlew");
    private static final Fraction TWO_PER_CENT = Fraction.of(1, 50);
    /** 71 teeth of module 2.5 at 22 degrees. */
    private static final double CURLEW_CENTRE = 2.5 * 71 / 2 / Math.cos(Math.toRadians(22));

    /** ISO 54, both series. */
    private static final List<Double> MODULES = List.of(1.75, 2.0, 2.25, 2.5, 2.75, 3.0, 3.5, 4.0, 4.5, 5.0);

    private static final GearRules RULES = rules(OptionalDouble.of(CURLEW_CENTRE));

    /** A step of 3/2 from second to third: every pair within two per cent that can be cut, and no other. */
    @Test
    void allThatBruteForceFindsAndNoMore() {
        BruteForce force = new BruteForce(RULES, 20, false);
        Fraction second = Fraction.of(47 * 43, 24 * 28);
        double wanted = second.toDouble() / 1.5;
        Set<String> expected = new HashSet<>();
        for (double module : MODULES) {
            for (int third = 12; third <= 60; third++) {
                for (int cluster = 12; cluster <= 60; cluster++) {
                    double ratio = 47.0 / 24 * third / cluster;
                    if (Math.abs(ratio / wanted - 1) <= 0.02 && force.suits(module, third, cluster)) {
                        expected.add(module + " " + third + "/" + cluster);
                    }
                }
            }
        }
        List<Proposal> found = found(CURLEW, new Wish.StepTo("3", "2", Fraction.of(3, 2), TWO_PER_CENT));
        assertEquals(
                expected,
                found.stream()
                        .map(each -> each.moduleMm() + " " + each.firstTeeth() + "/" + each.secondTeeth())
                        .collect(Collectors.toSet()));
        assertFalse(expected.isEmpty());
        for (Proposal each : found) {
            assertEquals(new Mesh("third", "cluster-third"), each.mesh());
            assertEquals(Fraction.of(47L * each.firstTeeth(), 24L * each.secondTeeth()), each.ratio());
            assertEquals(
                    force.shiftSum(each.moduleMm(), each.firstTeeth(), each.secondTeeth(), each.helixDeg()),
                    each.shiftSum(),
                    1e-9);
            assertTrue(each.helixDeg() >= 15 && each.helixDeg() <= 30);
            assertEquals(0, each.cut(0.1).circumferentialBacklashMm(), 1e-9);
        }
    }

    /** On shafts so near each other that few teeth fit, undercut decides; the shift that it asks for is solved for. */
    @Test
    void fewTeethAskForShift() {
        GearRules near = new GearRules(OptionalDouble.of(45), List.of(3.0, 4.0), 0, 25, -0.3, 1.2, 8, 16);
        PairPlace place = new PairPlace(
                CURLEW,
                new Mesh("third", "cluster-third"),
                List.of("third"),
                List.of("cluster-third"),
                Fraction.of(34, 37),
                1,
                -1);
        Target any = new Target(Fraction.of(1, 10), Fraction.of(10), Fraction.ONE, false);
        BruteForce force = new BruteForce(near, 20, false);
        Set<String> expected = new HashSet<>();
        for (double module : List.of(2.5, 3.0, 4.0)) {
            for (int first = 8; first <= 16; first++) {
                for (int second = 8; second <= 16; second++) {
                    if (force.suits(module, first, second)) {
                        expected.add(module + " " + first + "/" + second);
                    }
                }
            }
        }
        List<Proposal> found = new PairSearch(place, near, 45, any).all().toList();
        assertEquals(
                expected,
                found.stream()
                        .map(each -> each.moduleMm() + " " + each.firstTeeth() + "/" + each.secondTeeth())
                        .collect(Collectors.toSet()));
        assertTrue(found.stream().anyMatch(each -> each.shiftSum() > 0.2));
    }

    /** The nearest first; of equally near ones those that keep module and helix, then those with the least shift. */
    @Test
    void theBestFirst() {
        List<Proposal> found = found(CURLEW, new Wish.StepTo("3", "2", Fraction.of(3, 2), TWO_PER_CENT));
        for (int i = 1; i < found.size(); i++) {
            Proposal better = found.get(i - 1);
            Proposal worse = found.get(i);
            int byDistance = better.distance().compareTo(worse.distance());
            assertTrue(byDistance <= 0);
            assertTrue(byDistance < 0 || better.unlikeNow() <= worse.unlikeNow());
        }
    }

    /** 34/37 is there; 35/36 moves third least toward second of all with 71 teeth of this module and helix. */
    @Test
    void aThirdNearerSecond() {
        List<Proposal> found = found(CURLEW, new Wish.Nearer("3", "2"));
        Fraction third = Fraction.of(47 * 34, 24 * 37);
        Fraction second = Fraction.of(47 * 43, 24 * 28);
        found.forEach(each ->
                assertTrue(each.ratio().compareTo(third) > 0 && each.ratio().compareTo(second) < 0, each::toString));
        Proposal asNow = found.stream()
                .filter(each -> each.unlikeNow() == 0 && each.firstTeeth() + each.secondTeeth() == 71)
                .findFirst()
                .orElseThrow();
        assertEquals(List.of(35, 36), List.of(asNow.firstTeeth(), asNow.secondTeeth()));
        for (int place = 1; place < found.size(); place++) {
            assertTrue(found.get(place - 1).unlikeNow() <= found.get(place).unlikeNow());
        }
        assertEquals(0, asNow.shiftSum(), 1e-9);
        Comparison swapped = Comparison.of(CURLEW, asNow.changes(), Running.NOT_STATED, Swaps.REASONER);
        assertEquals(asNow.ratio(), swapped.gear("3").after().orElseThrow().ratio());
        assertTrue(swapped.namesHold());
    }

    @Test
    void whichPairAndWhichRatioIsToldBeforeAnyTeethAre() {
        WishSolver solver = new WishSolver(CURLEW, Swaps.REASONER);
        assertEquals(Telling.told(new Mesh("third", "cluster-third")), solver.pairFor(new Wish.Nearer("3", "2")));
        assertEquals(
                List.of("5th has no pair of its own"),
                solver.pairFor(new Wish.Nearer("5", "4")).because());
        Fraction wished = Fraction.of(33, 20);
        Target target = solver.targetOf(new Wish.RatioOf("3", wished, TWO_PER_CENT))
                .value()
                .orElseThrow();
        assertEquals(wished, target.ideal());
        assertTrue(target.isMetBy(wished.times(Fraction.of(51, 50))));
        assertFalse(target.isMetBy(wished.times(Fraction.of(52, 50))));
    }

    /** ISO 54 from 1.5 to 6 mm, the first series and the second; straight teeth stay straight. */
    @Test
    void whatIsCommonlyCut() {
        GearRules helical = GearRules.common(OptionalDouble.of(CURLEW_CENTRE), 22);
        assertEquals(List.of(1.5, 1.75, 2.0, 2.25, 2.5, 2.75, 3.0, 3.5, 4.0, 4.5, 5.0, 5.5, 6.0), helical.modulesMm());
        assertEquals(0, GearRules.common(OptionalDouble.empty(), 0).helixMostDeg());
    }

    /** In third at 60 km/h: what the new teeth come to on the road is asked of the layout that has them. */
    @Test
    void threeHundredTurnsLess() {
        Fraction kmh = Fraction.of(60);
        Running sixty = new Running(Optional.of(kmh), Optional.empty(), Optional.empty());
        List<Proposal> found = found(CURLEW, new Wish.CruiseBy("3", kmh, Fraction.of(-300), Fraction.of(1, 100)));
        assertFalse(found.isEmpty());
        for (Proposal each : found.subList(0, Math.min(5, found.size()))) {
            GearComparison third =
                    Comparison.of(CURLEW, each.changes(), sixty, Swaps.REASONER).gear("3");
            double wanted = third.before()
                            .orElseThrow()
                            .rpmAtCruise()
                            .value()
                            .orElseThrow()
                            .toDouble()
                    - 300;
            assertEquals(
                    wanted,
                    third.after()
                            .orElseThrow()
                            .rpmAtCruise()
                            .value()
                            .orElseThrow()
                            .toDouble(),
                    0.01 * wanted);
        }
    }

    @Test
    void anEngineSpeedAtATopSpeed() {
        List<Proposal> found =
                found(CURLEW, new Wish.RpmAt("4", Fraction.of(110), Fraction.of(4500), Fraction.of(1, 100)));
        Running fast = new Running(Optional.of(Fraction.of(110)), Optional.empty(), Optional.empty());
        assertEquals(
                4500,
                Comparison.of(CURLEW, found.get(0).changes(), fast, Swaps.REASONER)
                        .gear("4")
                        .after()
                        .orElseThrow()
                        .rpmAtCruise()
                        .value()
                        .orElseThrow()
                        .toDouble(),
                45);
    }

    @Test
    void whatCannotBeToldIsNamed() {
        WishSolver solver = new WishSolver(CURLEW, Swaps.REASONER);
        Wish fifth = new Wish.RatioOf("5", Fraction.of(9, 10), TWO_PER_CENT);
        assertEquals(
                Optional.of("cannot be told, 5th has no pair of its own"),
                solver.solve(fifth, RULES).whyNot());
        Wish third = new Wish.RatioOf("3", Fraction.of(9, 5), TWO_PER_CENT);
        assertEquals(
                Optional.of("cannot be told, the centre distance of third gear and cluster third gear is missing"),
                solver.solve(third, rules(OptionalDouble.empty())).whyNot());
        Layout avocet = Boxes.the("avocet");
        assertEquals(
                List.of("the axle ratio is missing", "the tyre or its rolling circumference is missing"),
                new WishSolver(avocet, Swaps.REASONER)
                        .solve(new Wish.CruiseBy("3", Fraction.of(80), Fraction.of(-300), TWO_PER_CENT), RULES)
                        .because());
        assertEquals(
                List.of("the engine would turn at -4635.96 rpm, where it turns at 5364.04 now"),
                solver.solve(new Wish.CruiseBy("3", Fraction.of(93), Fraction.of(-10_000), TWO_PER_CENT), RULES)
                        .because());
    }

    @Test
    void wishesThatMakeNoSenseAreRefused() {
        WishSolver solver = new WishSolver(CURLEW, Swaps.REASONER);
        assertEquals(
                List.of(
                        "Curlew has no gear '7'. Perhaps '1' is meant.",
                        "Curlew has no gear 'third'. It can be: 1, 2, 3, 4, 5, R."),
                assertThrows(ImpossibleFactsException.class, () -> solver.solve(new Wish.Nearer("7", "third"), RULES))
                        .problems());
        assertEquals(
                4,
                assertThrows(
                                ImpossibleFactsException.class,
                                () -> new GearRules(OptionalDouble.of(-1), List.of(0.0), 30, 15, 1, 0, 12, 60))
                        .problems()
                        .size());
    }

    private static List<Proposal> found(Layout layout, Wish wish) {
        Telling<List<Proposal>> found = new WishSolver(layout, Swaps.REASONER).solve(wish, RULES);
        return found.value().orElseThrow(() -> new AssertionError(found.whyNot()));
    }

    private static GearRules rules(OptionalDouble centreMm) {
        return new GearRules(centreMm, MODULES, 15, 30, -0.3, 1.2, 12, 60);
    }
}
