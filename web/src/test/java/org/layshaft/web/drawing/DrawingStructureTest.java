package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.w3c.dom.Element;

class DrawingStructureTest {
    private static final Pattern TOO_FINE = Pattern.compile("\\.\\d{3}");

    static Stream<Layout> demos() {
        return Boxes.demos();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void drawsEveryPartOnceInEveryStance(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            List<String> drawn = Picture.of(
                            Drawing.of(layout, Boxes.moving(layout, stance)).svg())
                    .values("data-part");
            assertEquals(Boxes.figured(layout), new TreeSet<>(drawn), "" + stance);
            assertEquals(Boxes.figured(layout).size(), drawn.size(), "" + stance);
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void partsAreLinksWithNames(Layout layout) {
        Picture picture = Picture.of(
                Drawing.of(layout, Boxes.moving(layout, Stance.NEUTRAL)).svg());
        assertEquals("group", picture.root().getAttribute("role"));
        for (String id : Boxes.figured(layout)) {
            Part part = layout.the(Part.class, id);
            Element element = picture.part(part.id());
            assertEquals("a", element.getTagName());
            assertEquals("/?break=" + part.id(), element.getAttribute("href"));
            assertEquals(part.name(), element.getAttribute("aria-label"));
            assertTrue(Picture.first(element, "title").getTextContent().startsWith(part.name()));
            assertTrue(picture.classes(part.id()).contains(part.kind().word()));
        }
    }

    @Test
    void isAnImageWhereNothingIsALink() {
        Picture picture =
                Picture.of(Drawing.of(Boxes.demo("curlew"), View.plain()).svg());
        assertEquals("img", picture.root().getAttribute("role"));
        assertEquals(0, picture.all(element -> element.getTagName().equals("a")).count());
        assertEquals("g", picture.part("third").getTagName());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void keepsToAStrictContentPolicy(Layout layout) {
        Picture picture = Picture.of(
                Drawing.of(layout, Boxes.moving(layout, Stance.NEUTRAL)).svg());
        assertEquals(List.of(), picture.values("style"));
        assertEquals(
                0,
                picture.all(element -> Set.of("style", "script").contains(element.getTagName()))
                        .count());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void idsAreUniqueAndPrefixed(Layout layout) {
        Picture picture = Picture.of(
                Drawing.of(layout, Boxes.moving(layout, Stance.NEUTRAL)).svg());
        List<String> ids = picture.values("id");
        assertEquals(new HashSet<>(ids).size(), ids.size());
        assertTrue(ids.stream().allMatch(id -> id.startsWith("box-")), "" + ids);
        assertTrue(ids.contains(picture.root().getAttribute("aria-labelledby")));
        assertTrue(ids.contains(picture.root().getAttribute("aria-describedby")));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void sameViewGivesTheSameText(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            View view = Boxes.moving(layout, stance);
            assertEquals(
                    Drawing.of(layout, view).svg(), Drawing.of(layout, view).svg());
        }
    }

    @Test
    void numbersAreShortAndThoseOfNoLocale() {
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            String svg = Drawing.of(Boxes.demo("plover"), View.plain()).svg();
            assertFalse(TOO_FINE.matcher(svg).find());
            assertFalse(svg.contains("NaN"));
            assertFalse(Pattern.compile("\\b[xy]=\"-?\\d+,").matcher(svg).find());
        } finally {
            Locale.setDefault(usual);
        }
    }

    @Test
    void escapesWhateverAPackMaySay() {
        String hostile = "<script>alert('&')</script> \\\" onload=x";
        String text = Boxes.text("curlew")
                .replace("\"name\": \"Curlew\"", "\"name\": \"" + hostile + "\"")
                .replace("\"cluster driven gear\"", "\"" + hostile + "\"");
        Layout layout = Boxes.typed(text);
        View view = new View(
                Stance.NEUTRAL,
                Optional.empty(),
                Set.of("cluster-driven"),
                Set.of(),
                part -> Optional.of("/?q=\"><script>"),
                "box-");
        String svg = Drawing.of(layout, view).svg();
        assertFalse(svg.contains("<script"));
        String name = hostile.replace("\\", "");
        assertEquals(name, Picture.of(svg).part("cluster-driven").getAttribute("aria-label"));
        assertEquals("/?q=\"><script>", Picture.of(svg).part("third").getAttribute("href"));
    }

    @Test
    void standsAloneWithItsSize() {
        Drawing drawing = Drawing.of(Boxes.demo("avocet"), View.plain());
        String alone = drawing.standalone();
        assertTrue(alone.startsWith(
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\""));
        Element root = Picture.of(alone).root();
        String[] viewBox = root.getAttribute("viewBox").split(" ");
        assertEquals(viewBox[2], root.getAttribute("width"));
        assertEquals(viewBox[3], root.getAttribute("height"));
        assertFalse(Picture.of(drawing.svg()).root().hasAttribute("width"));
    }
}
