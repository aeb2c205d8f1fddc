package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.layshaft.engine.fit.check.NearMiss.assertBetween;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.engine.fit.check.FittingBox.Spot;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;

/** Gear pairs of the gear makers' tables, put in a box. */
class PublishedPairsTest {
    private static final Spot DRIVE = new Spot("input", "drive");
    private static final Spot DRIVEN = new Spot("cluster-driven", "");

    /** G-05: module 3, 30 degrees, 12 and 60 teeth, shifts 0.09809 and 0 run without backlash at 125.000 mm. */
    @Test
    void g05HelicalPairBindsBelow125Mm() {
        FittingBox pair =
                gear(gear(FittingBox.phalarope(), DRIVE, 12, 30, 0.09809, 48.153), DRIVEN, 60, 30, 0, 213.842);
        assertBetween(
                inCase(pair, 125, 0.001),
                "centre-distance",
                "box-case",
                SpurPair.SHAFTS,
                "centre/distance_mm",
                "125.0012",
                "125.0005");
    }

    /** G-02: module 3, 12 and 24 teeth, shifts 0.6 and 0.36, at 56.4999 mm; the contact ratio comes to 1.202. */
    @Test
    void g02ShiftedPairHasLittleContactToSpare() {
        FittingBox pair = inCase(
                gear(gear(FittingBox.phalarope(), DRIVE, 12, 0, 0.6, 44.84), DRIVEN, 24, 0, 0.36, 79.4),
                56.4999,
                0.001);
        Judgement total = of(pair, "total-contact", "drive");
        assertEquals(1.202, total.figures().get(2).number(), 5e-4);
        assertEquals(Outcome.HOLDS, total.outcome());
        assertBetween(pair, "total-contact", "input", "drive", "toothing/tip_mm", "44.82", "44.81");
    }

    /** G-01: 12 and 24 teeth of module 3 without shift have roots 0.75 mm clear of the tips. */
    @Test
    void g01StandardPairKeepsItsClearance() {
        FittingBox pair =
                inCase(gear(gear(FittingBox.phalarope(), DRIVE, 12, 0, 0, 42), DRIVEN, 24, 0, 0, 78), 54, 0.01);
        Judgement clearance = of(pair, "tip-clearance", "drive");
        assertEquals(0.74, clearance.figures().get(0).number(), 1e-9);
        assertEquals(0.74, clearance.figures().get(1).number(), 1e-9);
    }

    /** G-04: 16 teeth in a ring of 24, module 3, shifts 0 and 0.5, without backlash at 13.1683 mm; they bind above. */
    @Test
    void g04PinionInARingBindsAbove() {
        Map<String, CataloguePart> parts = new LinkedHashMap<>();
        parts.put("planet", ringPart("planet", "external", 16, 0));
        parts.put("ring", ringPart("ring", "internal", 24, 0.5));
        Facts centre =
                Facts.of(List.of(Fact.of(FactName.CENTRE_MM, 13.16), Fact.of(FactName.CENTRE_TOLERANCE_MM, 0.001)));
        parts.put(
                "box-case",
                new CataloguePart(
                        "case",
                        ComponentKind.CASE,
                        "case",
                        Facts.NONE,
                        Map.of("planet-spindle/ring-seat", centre),
                        ""));
        FittingBox ring = FittingBox.of(Boxes.the("greenshank"), parts);
        assertEquals(Outcome.HOLDS, of(ring, "centre-distance", "planet").outcome());
        assertEquals(
                13.1683, of(ring, "centre-distance", "planet").figures().get(0).number(), 5e-5);
        FittingBox apart = ring.with("box-case", "planet-spindle/ring-seat", Fact.of(FactName.CENTRE_MM, 13.168));
        assertEquals(Outcome.FAILS, of(apart, "centre-distance", "planet").outcome());
    }

    /** F-10: a gear and the ring around it have one hand, two external gears opposite ones. */
    @Test
    void f10HandsInARingAreAlike() {
        Map<String, CataloguePart> parts = new LinkedHashMap<>();
        parts.put("planet", ringPart("planet", "external", 16, 0));
        parts.put("ring", ringPart("ring", "internal", 24, 0.5));
        FittingBox helical = FittingBox.of(Boxes.the("greenshank"), parts)
                .with("planet", Fact.of(FactName.HELIX_DEG, 20))
                .with("ring", Fact.of(FactName.HELIX_DEG, 20))
                .with("planet", Fact.of(FactName.HAND, "left"));
        assertEquals(
                Outcome.HOLDS,
                of(helical.with("ring", Fact.of(FactName.HAND, "left")), "helix-hand", "planet")
                        .outcome());
        assertEquals(
                Outcome.FAILS,
                of(helical.with("ring", Fact.of(FactName.HAND, "right")), "helix-hand", "planet")
                        .outcome());
    }

    private static CataloguePart ringPart(String number, String form, int teeth, double shift) {
        Facts facts = Facts.of(List.of(
                Fact.of(FactName.FORM, form),
                Fact.of(FactName.TEETH, teeth),
                Fact.of(FactName.MODULE_MM, 3),
                Fact.of(FactName.PRESSURE_ANGLE_DEG, 20),
                Fact.of(FactName.HELIX_DEG, 0),
                Fact.of(FactName.PROFILE_SHIFT, shift),
                Fact.of(FactName.BACKLASH_LEAST_MM, 0)));
        return new CataloguePart(number, ComponentKind.GEAR, number, facts, Map.of(), "");
    }

    private static FittingBox gear(FittingBox box, Spot spot, int teeth, double helixDeg, double shift, double tipMm) {
        FittingBox made = box.neverHad(spot, FactName.SPAN_MM).neverHad(spot, FactName.SPAN_TEETH);
        for (Fact fact : List.of(
                Fact.of(FactName.TEETH, teeth),
                Fact.of(FactName.MODULE_MM, 3),
                Fact.of(FactName.HELIX_DEG, helixDeg),
                Fact.of(FactName.PROFILE_SHIFT, shift),
                Fact.of(FactName.TIP_MM, tipMm),
                Fact.of(FactName.BACKLASH_LEAST_MM, 0))) {
            made = made.always(spot.place(), spot.feature(), fact);
        }
        return made;
    }

    private static FittingBox inCase(FittingBox box, double distanceMm, double toleranceMm) {
        return box.always("box-case", SpurPair.SHAFTS, Fact.of(FactName.CENTRE_MM, distanceMm))
                .always("box-case", SpurPair.SHAFTS, Fact.of(FactName.CENTRE_TOLERANCE_MM, toleranceMm));
    }

    private static Judgement of(FittingBox box, String check, String gear) {
        return box.judged(check).stream()
                .filter(judgement -> judgement.meeting().one().equals(gear)
                        && !judgement.meeting().other().equals("sun"))
                .findFirst()
                .orElseThrow();
    }
}
