package org.layshaft.engine.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.PartSet;

/** What is left out for the sake of speed changes no verdict: over the whole catalogue of Saltmarsh. */
class QuickRoadTest {
    private static final PartsCounter COUNTER = PartsCounter.of(Boxes.knowledge());

    static Stream<BuiltBox> boxes() {
        return COUNTER.boxes().values().stream();
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void the_quick_verdict_is_that_of_the_whole_account(BuiltBox box) {
        Set<FitVerdict> seen = new HashSet<>();
        for (PartSet set : COUNTER.catalogue().sets().values()) {
            for (Placement placement : COUNTER.placements(set, box)) {
                Serving account = COUNTER.serve(placement, box, 1);
                assertEquals(account.verdict(), COUNTER.quickly(placement, box, 1), () -> placement.toString());
                seen.add(account.verdict());
            }
        }
        assertTrue(seen.contains(FitVerdict.DOES_NOT_FIT), seen.toString());
    }

    /** What a search remembers of a meeting it goes by as long as the parts with a bearing on it are the same. */
    @ParameterizedTest
    @MethodSource("boxes")
    void nothing_that_is_said_of_a_meeting_hangs_on_parts_without_a_bearing_on_it(BuiltBox box) {
        Fitted before = box.fitted();
        Set<String> places = box.build().fitted().keySet();
        Places of = before.places();
        for (Meeting meeting : of.meetingsAt(places)) {
            if (meeting.kind() != MeetingKind.TOGETHER) {
                List<Judgement> said = COUNTER.judge(meeting, before, before).toList();
                places.stream()
                        .filter(place -> !of.involved(meeting).contains(place))
                        .forEach(place -> assertEquals(
                                said,
                                COUNTER.judge(meeting, before, before.with(Map.of(place, unknown(before, place))))
                                        .toList(),
                                () -> "%s without %s".formatted(meeting, place)));
            }
        }
    }

    private static CataloguePart unknown(Fitted box, String place) {
        CataloguePart part = box.ownPartAt(place);
        return new CataloguePart("unknown", part.kind(), "unknown", Facts.NONE, Map.of(), "");
    }

    /** The ratio that a differential carries changes with the pinion, and not only with the ring gear. */
    @Test
    void a_pinion_alone_is_held_to_the_carrier_break() {
        BuiltBox knot = COUNTER.boxes().get("knot");
        PartSet pinion = PartSet.of(COUNTER.catalogue().part("SM-4021").orElseThrow());
        Serving alone = COUNTER.serve(COUNTER.placements(pinion, knot).get(0), knot, 0);
        assertTrue(alone.judgements().stream()
                .anyMatch(judgement -> judgement.check().id().equals("carrier-ratio")));
    }
}
