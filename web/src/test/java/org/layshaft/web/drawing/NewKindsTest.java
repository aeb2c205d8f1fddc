package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/** Planets, hollow shafts, clutches inside, chains and axles across, one at a time. */
class NewKindsTest {

    private static Picture picture(Layout layout, Stance stance) {
        return Picture.of(Drawing.of(layout, Boxes.turning(layout, stance)).svg());
    }

    @Test
    void planetsThatMeshWithEachOtherLieOnEitherSideOfTheAxis() {
        Layout layout = TypedBoxes.dunlin();
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        double axis = plan.carrierY("input");
        assertTrue(plan.gearY("inner-planet") < axis);
        assertTrue(plan.gearY("outer-planet") > axis);
        assertTrue(plan.twin("inner-planet").isEmpty());
        assertEquals(
                List.of("inner-planet/outer-planet"),
                picture(layout, Stance.NEUTRAL).values("data-mesh"));
    }

    @Test
    void aSinglePlanetIsDrawnOnBothSides() {
        Plan plan = new Plan(Boxes.demo("heron"), Stance.NEUTRAL);
        double axis = plan.carrierY("main-shaft");
        Box above = plan.gearBox("range-planet");
        Box below = plan.twin("range-planet").orElseThrow();
        assertEquals(axis - above.y(), below.y() - axis, 1e-6);
    }

    @Test
    void aRingThatStandsHoldsAgainstTheTorque() {
        Layout layout = TypedBoxes.dunlin();
        Picture picture = picture(layout, Stance.NEUTRAL);
        assertTrue(picture.classes("ring").contains("holds"));
        assertFalse(picture.classes("ring").contains("carries"));
        String says = Picture.first(picture.part("ring"), "title").getTextContent();
        assertTrue(says.contains("teeth inside") && says.contains("holds against the torque"), says);
    }

    @Test
    void anInnerShaftRunsThroughAHollowOne() {
        Layout layout = Boxes.demo("sanderling");
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        double x = plan.x("input-fourth");
        assertTrue(plan.nesting().within("outer-input").contains("inner-input"));
        assertTrue(plan.nesting().bore("outer-input", x) > plan.nesting().radius("inner-input", x));
        assertEquals(0, plan.nesting().bore("inner-input", x));
    }

    @Test
    void aClosedClutchHasItsPlatesTogetherAndLeadsOn() {
        Layout layout = Boxes.demo("sanderling");
        Stance first = Stance.NEUTRAL.with("1-3-sleeve", Side.FRONT);
        List<String> ways =
                picture(layout, first.with("odd-clutch", Side.FRONT)).values("data-way");
        assertTrue(ways.get(0).startsWith("input odd-clutch inner-input input-first"), "" + ways);
        assertTrue(picture(layout, first).values("data-way").isEmpty());
    }

    @Test
    void sprocketsAreJoinedByTwoStrands() {
        Layout layout = Boxes.demo("greenshank");
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        assertEquals(plan.x("upper-sprocket"), plan.x("lower-sprocket"), 1e-6);
        assertTrue(plan.gearBox("upper-sprocket").bottom()
                < plan.gearBox("lower-sprocket").top());
        assertEquals(1, picture(layout, Stance.NEUTRAL).ofClass("chain").count());
    }

    @Test
    void axlesLieAcrossWithTheLeftWheelAtTheFoot() {
        Layout layout = TypedBoxes.wigeon();
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        Figures figures = new Figures(plan, Surroundings.of(plan));
        for (String axle : List.of("front", "rear")) {
            double y = plan.carrierY(axle + "-differential");
            assertEquals(plan.gearY(axle + "-pinion"), y, 1e-6);
            assertTrue(figures.box(axle + "-left-half-shaft").y() > y);
            assertTrue(figures.box(axle + "-right-half-shaft").y() < y);
            assertTrue(figures.box(axle + "-ring").y() > y, "a crown on the left of its pinion");
        }
        assertTrue(plan.x("front-differential") < plan.x("front-pinion"));
        assertTrue(plan.x("rear-differential") > plan.x("rear-pinion"));
    }

    @Test
    void aDogRingInTheCaseStandsStill() {
        Layout layout = Boxes.demo("heron");
        Picture picture = picture(layout, Stance.NEUTRAL.with("range-sleeve", Side.FRONT));
        assertTrue(picture.classes("case-dogs").contains("stands-still"));
        String says = Picture.first(picture.part("case-dogs"), "title").getTextContent();
        assertTrue(says.contains("stands in the case"), says);
    }
}
