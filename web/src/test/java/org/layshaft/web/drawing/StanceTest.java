package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

class StanceTest {

    static Stream<Layout> demos() {
        return Boxes.demos();
    }

    private static Figures figures(Layout layout, Stance stance) {
        Plan plan = new Plan(layout, stance);
        return new Figures(plan, Surroundings.of(plan));
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void sleeveForkAndRailGoToTheirSideAndTheHubStays(Side side) {
        Layout layout = Boxes.demo("curlew");
        Figures neutral = figures(layout, Stance.NEUTRAL);
        Figures engaged = figures(layout, Stance.NEUTRAL.with("3-4-sleeve", side));
        double way = side == Side.FRONT ? -1 : 1;
        for (String moved : new String[] {"3-4-sleeve", "3-4-fork", "3-4-rail"}) {
            double by = engaged.box(moved).x() - neutral.box(moved).x();
            assertEquals(way, Math.signum(by), moved);
        }
        for (String still : new String[] {"3-4-hub", "1-2-sleeve", "1-2-rail", "3-4-detent", "third"}) {
            assertEquals(neutral.box(still), engaged.box(still), still);
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void aSleeveCoversTheTeethOfTheGearItCouplesAndNoOthers(Layout layout) {
        for (ShiftMember member : layout.members()) {
            member.sides().forEach((side, engagement) -> {
                if (engagement instanceof Engagement.Couples couples) {
                    Figures engaged = figures(layout, Stance.NEUTRAL.with(member.part(), side));
                    Figures neutral = figures(layout, Stance.NEUTRAL);
                    String teeth = couples.clutchingTeeth();
                    assertTrue(engaged.box(member.part()).shared(engaged.box(teeth)) > 0, teeth);
                    assertEquals(0, neutral.box(member.part()).shared(neutral.box(teeth)), teeth);
                }
            });
        }
    }

    @Test
    void aSlidingIdlerIsOutOfMeshInNeutralAndInItWhenEngaged() {
        Layout layout = Boxes.demo("plover");
        Plan neutral = new Plan(layout, Stance.NEUTRAL);
        Plan engaged = new Plan(layout, Stance.NEUTRAL.with("reverse-idler", Side.REAR));
        double widths = neutral.half("reverse-idler") + neutral.half("input-reverse");
        assertTrue(neutral.x("input-reverse") - neutral.x("reverse-idler") >= widths);
        assertEquals(engaged.x("input-reverse"), engaged.x("reverse-idler"), 1e-6);
        assertEquals(engaged.x("sleeve-rim"), engaged.x("reverse-idler"), 1e-6);
    }

    @Test
    void aRimGoesWithItsSleeve() {
        Layout layout = Boxes.demo("avocet");
        Plan engaged = new Plan(layout, Stance.NEUTRAL.with("1-2-sleeve", Side.REAR));
        assertEquals(engaged.x("1-2-sleeve"), engaged.x("first"), 1e-6);
        assertEquals(engaged.x("cluster-first"), engaged.x("first"), 1e-6);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theDrawingKeepsItsWidthFromGearToGear(Layout layout) {
        String width = null;
        for (Stance stance : Boxes.stances(layout)) {
            String[] viewBox = Picture.of(
                            Drawing.of(layout, Boxes.moving(layout, stance)).svg())
                    .root()
                    .getAttribute("viewBox")
                    .split(" ");
            width = width == null ? viewBox[2] : width;
            assertEquals(width, viewBox[2], "" + stance);
        }
    }
}
