package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.ShiftMember;
import org.w3c.dom.Element;

/** By what sleeves are moved, and how a drawing looks that goes to a copier. */
class HandlesTest {

    static Stream<Layout> families() {
        return Boxes.families();
    }

    private static Picture movable(Layout layout, Stance stance) {
        View view = Boxes.turning(layout, stance)
                .moving(move -> Optional.of(
                        "/?" + move.member() + "=" + move.to().map(Enum::name).orElse("NEUTRAL")));
        return Picture.of(Drawing.of(layout, view).svg());
    }

    /** From every place each place next to it can be reached, and no other. */
    @ParameterizedTest
    @MethodSource("families")
    void thereIsAnArrowToEachPlaceNextToWhereAMemberStands(Layout layout) {
        for (Stance stance : Boxes.each(layout)) {
            List<String> arrows = movable(layout, stance)
                    .ofClass("move")
                    .map(arrow -> arrow.getAttribute("href"))
                    .sorted()
                    .toList();
            List<String> wanted = layout.members().stream()
                    .flatMap(member -> next(member, stance))
                    .sorted()
                    .toList();
            assertEquals(wanted, arrows, "" + stance);
        }
    }

    private static Stream<String> next(ShiftMember member, Stance stance) {
        String start = "/?" + member.part() + "=";
        return stance.of(member.part()).isPresent()
                ? Stream.of(start + "NEUTRAL")
                : member.sides().keySet().stream().map(side -> start + side.name());
    }

    @ParameterizedTest
    @MethodSource("families")
    void arrowsAreWideEnoughAndSayWhatTheyDo(Layout layout) {
        movable(layout, Stance.NEUTRAL).ofClass("move").forEach(arrow -> {
            Element plate = Picture.first(arrow, "rect");
            assertTrue(Double.parseDouble(plate.getAttribute("width")) >= 24, "WCAG 2.2, 2.5.8");
            assertTrue(arrow.getAttribute("aria-label").startsWith("Move the "), arrow.getAttribute("aria-label"));
        });
    }

    @Test
    void aDrawingWithNothingToMoveHasNoArrows() {
        assertEquals(
                0,
                Picture.of(Drawing.of(Boxes.demo("curlew"), View.plain()).svg())
                        .ofClass("move")
                        .count());
    }

    @ParameterizedTest
    @MethodSource("families")
    void inBlackThereIsNoColour(Layout layout) {
        for (View.From from : View.From.values()) {
            String svg = Drawing.of(
                            layout,
                            Boxes.turning(layout, Boxes.each(layout).get(0))
                                    .from(from)
                                    .in(View.Printing.BLACK))
                    .standalone();
            assertFalse(svg.matches("(?s).*(fill|stroke)=\"#(?!000000|ffffff|e0e0e0)[0-9a-f]{6}.*"), layout.id());
            Picture.of(svg.substring(svg.indexOf("<svg")));
        }
    }
}
