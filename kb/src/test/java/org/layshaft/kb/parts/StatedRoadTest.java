package org.layshaft.kb.parts;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.json.Document;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Road.EnginePoint;
import org.layshaft.kb.layout.Road.SpeedRead;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.testing.Marked;
import org.layshaft.kb.typed.LayoutReading;

/** What a layout states of the vehicle is read as typed. */
class StatedRoadTest {
    @Test
    void everything_that_can_be_stated_is_read() {
        assertEquals(
                Optional.of(new Road(
                        Optional.of("155/80 R13 79T"),
                        OptionalInt.empty(),
                        number("0.97"),
                        number("1"),
                        number("0.9"),
                        number("890.5"),
                        number("0.013"),
                        number("0.72"),
                        number("1.2"),
                        List.of(point("1000", "60"), point("5500", "71.5")),
                        Optional.of(SpeedRead.GEARBOX_OUTPUT))),
                PackReader.check(List.of(Marked.resource("sound-pack")))
                        .knowledge()
                        .layout("dunlin")
                        .flatMap(Layout::road));
    }

    @Test
    void a_layout_that_states_nothing_has_no_road() {
        byte[] bare = "{\"format\": \"layshaft/layout/1\", \"id\": \"bare\", \"shafts\": {}}".getBytes(UTF_8);
        Document document = DocumentReader.read("bare.json", bare).document().orElseThrow();
        assertEquals(
                Optional.empty(),
                LayoutBuilder.build(LayoutReading.of(document.item())).layout().road());
    }

    private static EnginePoint point(String rpm, String torqueNm) {
        return new EnginePoint(new BigDecimal(rpm), new BigDecimal(torqueNm));
    }

    private static Optional<BigDecimal> number(String written) {
        return Optional.of(new BigDecimal(written));
    }
}
