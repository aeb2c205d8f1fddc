package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RouteTest {
    private static final Route DRAWING = new Route("/drawing/*.svg", call -> Reply.of(200, Reply.SVG, ""));

    @Test
    void theStarStandsForPartOfOneStep() {
        assertEquals(Optional.of("curlew"), DRAWING.match("/drawing/curlew.svg"));
        assertEquals(Optional.empty(), DRAWING.match("/drawing/.svg"));
        assertEquals(Optional.empty(), DRAWING.match("/drawing/a/b.svg"));
        assertEquals(Optional.empty(), DRAWING.match("/drawing/curlew.png"));
    }

    @Test
    void withoutAStarThePathIsWhole() {
        Route words = new Route("/api/words", call -> new Reply(200, Reply.JSON, new byte[0], Map.of()));
        assertEquals(Optional.of(""), words.match("/api/words"));
        assertEquals(Optional.empty(), words.match("/api/words/"));
    }
}
