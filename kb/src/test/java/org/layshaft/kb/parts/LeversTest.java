package org.layshaft.kb.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.testing.Layouts;

/** What selects: gear lever, other levers, a drum, and what closes clutches inside the box. */
class LeversTest {
    /** Sleeve 1 engages to the rear, 2-3 and hi-lo to both sides. */
    private static final String SHAFTS = """
            "shafts": { "input": { "along": [
              { "sleeve": "1" }, { "gear": "first", "teeth": 20, "free": true },
              { "gear": "second", "teeth": 20, "free": true }, { "sleeve": "2-3" },
              { "gear": "third", "teeth": 20, "free": true },
              { "gear": "high", "teeth": 20, "free": true }, { "sleeve": "hi-lo" },
              { "gear": "low", "teeth": 20, "free": true }
            ] } },
            """;

    @Test
    void the_gear_lever_has_a_place_for_each_side_that_engages_something() {
        Layout layout = Layouts.built(SHAFTS + "\"name\": \"Box\"");
        assertEquals(List.of("gear neutral 1-rear 2-3-front 2-3-rear hi-lo-front hi-lo-rear"), told(layout));
        assertEquals("gear lever", layout.levers().get(0).name());
    }

    @Test
    void another_lever_takes_its_rails_and_says_what_its_places_are_called() {
        Layout layout = Layouts.built(SHAFTS + """
                "selector": { "levers": [
                  { "lever": "hi-lo", "neutral": false, "rails": [{ "rail": "hi-lo", "front": "high", "rear": "low" }] }
                ] }""");
        assertEquals(
                List.of("gear neutral 1-rear 2-3-front 2-3-rear", "hi-lo hi-lo-front=high hi-lo-rear=low"),
                told(layout));
        assertEquals("hi-lo", layout.levers().get(1).name());
        assertEquals(List.of("1-rail", "2-3-rail"), layout.gate().planes());
        assertEquals(List.of("hi-lo-fork"), layout.the(Rail.class, "hi-lo-rail").forks());
    }

    @Test
    void only_what_keeps_rails_apart_is_a_part() {
        Layout layout = Layouts.built(SHAFTS + """
                "selector": { "levers": [
                  { "lever": "hi-lo", "rails": ["hi-lo"] },
                  { "lever": "main-range", "rails": ["1", "2-3"] }
                ] }""");
        assertEquals(
                Map.of("main-range-interlock", InterlockKind.PINS),
                layout.all(Interlock.class).collect(Collectors.toMap(Interlock::id, Interlock::form)));
        assertEquals(
                "main range interlock plunger between the 1 and 2-3 rails",
                layout.the(InterlockPiece.class, "main-range-interlock-plunger").name());
    }

    @Test
    void a_box_without_rails_for_the_gear_lever_has_none() {
        Layout layout = Layouts.built(SHAFTS + """
                "selector": { "levers": [{ "lever": "range", "name": "range switch", "rails": ["1", "2-3", "hi-lo"] }] }""");
        assertEquals(List.of("range neutral 1-rear 2-3-front 2-3-rear hi-lo-front hi-lo-rear"), told(layout));
        assertEquals("range switch", layout.levers().get(0).name());
    }

    @Test
    void a_drum_has_the_places_that_are_cut_in_it() {
        Layout layout = Layouts.built(SHAFTS + """
                "selector": { "drum": [{ "1": "rear", "hi-lo": "rear" }, {}, { "2-3": "front", "hi-lo": "front" }] }""");
        assertEquals(List.of("gear neutral 1-rear+hi-lo-rear 2-3-front+hi-lo-front"), told(layout));
        Interlock interlock = layout.the(Interlock.class, "interlock");
        assertEquals(InterlockKind.DRUM, interlock.form());
        assertEquals(List.of("drum-tracks"), interlock.pieces());
        InterlockPiece drum = layout.the(InterlockPiece.class, "drum-tracks");
        assertEquals("drum tracks", drum.name());
        assertEquals(InterlockPiece.Form.DRUM, drum.form());
        assertEquals(List.of("1-rail", "2-3-rail", "hi-lo-rail"), drum.rails());
    }

    @Test
    void clutches_inside_the_box_are_closed_one_at_a_time() {
        Layout layout = Layouts.built(dualClutch("\"name\": \"Box\""));
        assertEquals(List.of("clutches neutral odd-clutch-front even-clutch-front"), told(layout));
        Clutch odd = layout.the(Clutch.class, "odd-clutch");
        assertEquals("odd clutch", odd.name());
        assertEquals(Optional.of("input"), odd.drivenBy());
        assertEquals("inner", odd.drives());
        assertEquals(
                Map.of(Side.FRONT, new Engagement.Closes("inner")),
                layout.member("odd-clutch").sides());
        assertEquals(Optional.empty(), layout.forkOf("odd-clutch"));
    }

    @Test
    void clutches_that_a_lever_names_are_closed_by_it() {
        Layout layout = Layouts.built(
                dualClutch("\"selector\": { \"levers\": [{ \"lever\": \"pedal\", \"clutches\": \"even\" }] }"));
        assertEquals(List.of("pedal neutral even-clutch-front", "clutches neutral odd-clutch-front"), told(layout));
    }

    private static String dualClutch(String more) {
        return """
                "shafts": {
                  "input": { "along": [{ "clutch": "odd", "drives": "inner" }, { "clutch": "even", "drives": "outer" }] },
                  "inner": { "along": [] }, "outer": { "along": [] }
                }, %s""".formatted(more);
    }

    private static List<String> told(Layout layout) {
        return layout.levers().stream()
                .map(lever -> lever.id()
                        + (lever.neutral() ? " neutral" : "")
                        + lever.places().stream().map(LeversTest::told).collect(Collectors.joining()))
                .toList();
    }

    private static String told(Lever.Place place) {
        return place.pushes().entrySet().stream()
                .map(push -> push.getKey().replaceFirst("-rail$", "") + "-"
                        + push.getValue().word())
                .collect(Collectors.joining(
                        "+", " ", place.called().map("="::concat).orElse("")));
    }
}
