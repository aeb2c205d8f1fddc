package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;
import org.w3c.dom.Element;

class MarksTest {
    private final Layout curlew = Boxes.demo("curlew");

    private Picture picture(Stance stance) {
        return Picture.of(Drawing.of(curlew, Boxes.moving(curlew, stance)).svg());
    }

    @Test
    void aFaultyPartIsCrossedAndNamed() {
        Picture picture = Picture.of(
                Drawing.of(curlew, Boxes.marked(curlew, Stance.NEUTRAL, Set.of("3-4-fork"), Set.of("third-ring")))
                        .svg());
        assertTrue(picture.classes("3-4-fork").contains("faulty"));
        assertTrue(picture.classes("third-ring").contains("meant"));
        assertEquals(1, picture.ofClass("fault-cross").count());
        assertEquals(1, picture.ofClass("meant-ring").count());
        assertEquals(
                List.of("3-4 fork faulty"),
                picture.ofClass("fault-name").map(Element::getTextContent).toList());
    }

    @Test
    void aSoundBoxHasNoMarks() {
        Picture picture = picture(Stance.NEUTRAL);
        assertEquals(0, picture.ofClass("fault-cross").count());
        assertEquals(0, picture.ofClass("meant-ring").count());
        assertEquals(0, picture.ofClass("locked").count());
    }

    @Test
    void twoGearsAtOnceLockTheBox() {
        Picture picture = picture(Stance.NEUTRAL.with("3-4-sleeve", Side.REAR).with("1-2-sleeve", Side.FRONT));
        Element locked = picture.ofClass("locked").findFirst().orElseThrow();
        assertEquals("locked", locked.getTextContent().trim());
        assertEquals(
                "url(#box-hatch)",
                picture.ofClass("locked-hatch").findFirst().orElseThrow().getAttribute("fill"));
        assertTrue(picture.classes("countershaft").contains("stands-still"));
        assertEquals(0, picture.ofClass("power").count());
    }

    @Test
    void inNeutralTheOutputIsNotDrivenAndTheCountershaftTurns() {
        Picture picture = picture(Stance.NEUTRAL);
        assertTrue(picture.classes("output").contains("not-driven"));
        assertTrue(picture.classes("3-4-sleeve").contains("not-driven"));
        assertTrue(picture.classes("countershaft").contains("turns"));
        assertTrue(picture.classes("third").contains("turns"));
        assertFalse(picture.classes("third").contains("carries"));
        assertTrue(picture.part("output").hasAttribute("stroke-dasharray"));
        assertFalse(picture.part("countershaft").hasAttribute("stroke-dasharray"));
    }

    @Test
    void aCutShaftTurnsInFrontOfTheBreakOnly() {
        Fault cut = Fault.of("countershaft", "cut").with("place", "cluster-fourth");
        Stance third = Stance.NEUTRAL.with("3-4-sleeve", Side.REAR);
        Motion motion = Boxes.motion(curlew, third, cut);
        View view = new View(
                third, Optional.of(motion), Set.of("countershaft"), Set.of(), part -> Optional.empty(), "box-");
        Picture picture = Picture.of(Drawing.of(curlew, view).svg());
        assertTrue(picture.classes("countershaft").contains("turns"));
        assertTrue(picture.classes("cluster-fourth").contains("turns"));
        assertTrue(picture.classes("cluster-third").contains("not-driven"));
        // the arrow at the rear end would speak of the piece that does not turn
        assertFalse(picture.values("data-turns").contains("countershaft"));
        assertEquals(0, picture.ofClass("power").count());
    }

    @Test
    void whatCarriesHasAThickerOutline() {
        Picture picture = picture(Stance.NEUTRAL.with("3-4-sleeve", Side.REAR));
        double carrying = Double.parseDouble(picture.part("third").getAttribute("stroke-width"));
        double turning = Double.parseDouble(picture.part("second").getAttribute("stroke-width"));
        assertTrue(carrying >= 2 * turning);
    }

    @Test
    void theSenseOfTurningIsToldByShapeAndWords() {
        Picture picture = picture(Stance.NEUTRAL.with("5-R-sleeve", Side.REAR));
        for (String body : List.of("input", "countershaft", "output")) {
            boolean asEngine = body.equals("input");
            Element arrow = picture.all(
                            element -> element.getAttribute("data-turns").equals(body))
                    .findFirst()
                    .orElseThrow();
            assertTrue(arrow.getAttribute("class").endsWith(asEngine ? "as-engine" : "other-way"), body);
            String heads = asEngine ? "solid" : "hollow";
            assertTrue(picture.all(element -> element.getParentNode() == arrow)
                    .anyMatch(element -> element.getAttribute("class").equals("turning-head " + heads)));
            String says = Picture.first(arrow, "title").getTextContent();
            assertTrue(says.contains(asEngine ? "as the engine does (+)" : "the other way than the engine (−)"), says);
        }
    }
}
