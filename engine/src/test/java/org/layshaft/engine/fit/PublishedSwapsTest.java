package org.layshaft.engine.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.catalogue.PartSet;

/** Published questions about exchange, entered in the terms of the counter at Saltmarsh, whose parts are like those asked about. */
class PublishedSwapsTest {
    private static final PartsCounter COUNTER = PartsCounter.of(Boxes.knowledge());

    private static Serving serve(String number, String build, String place) {
        PartSet set = COUNTER.catalogue().set(number).orElseThrow();
        BuiltBox box = COUNTER.boxes().get(build);
        return COUNTER.placements(set, box).stream()
                .filter(placement -> placement.parts().containsKey(place))
                .map(placement -> COUNTER.serve(placement, box))
                .findFirst()
                .orElseThrow();
    }

    private static Set<String> failing(Serving serving) {
        return Set.copyOf(
                serving.failing().map(judgement -> judgement.check().id()).toList());
    }

    private static List<List<String>> companions(Serving serving) {
        return serving.companions().stream()
                .map(each -> each.units().stream().map(PartSet::number).toList())
                .toList();
    }

    private static Map<String, String> parts(Companions companions) {
        return companions.parts().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().number()));
    }

    /** S010: gears beyond the carrier break want the other differential case; a thick ring gear stands on the first. */
    @Test
    void S010_a_ring_gear_beyond_the_break_wants_its_differential_or_is_made_thick() {
        Serving beyond = serve("SM-4055", "knot", "ring-gear");
        assertEquals(FitVerdict.FITS_WITH, beyond.verdict());
        assertEquals(Set.of("carrier-ratio"), failing(beyond));
        assertEquals(
                Map.of("differential", "SM-4071"), parts(beyond.companions().get(0)));
        assertEquals(FitVerdict.FITS, serve("SM-4056", "knot", "ring-gear").verdict());
    }

    /** S012: the break lies at 4.56, so a ratio of 4.10 goes onto the case that had 3.54 (11/39 here). */
    @Test
    void S012_a_ratio_below_the_break_fits() {
        assertEquals(FitVerdict.FITS, serve("SM-4052", "knot", "ring-gear").verdict());
        assertEquals(FitVerdict.FITS, serve("SM-4054", "knot", "ring-gear").verdict());
    }

    /** S021: of the first design all four go to the second together; in a box of the second they go singly. */
    @Test
    void S021_fork_sleeve_and_rings_of_one_design() {
        Serving sleeve = serve("SM-2140", "plover-first", "3-4-sleeve");
        assertEquals(FitVerdict.FITS_WITH, sleeve.verdict());
        assertEquals(List.of(List.of("SM-2151")), companions(sleeve));
        assertTrue(failing(sleeve).contains("one-design"));
        assertEquals(
                FitVerdict.FITS, serve("SM-2151", "plover-first", "3-4-sleeve").verdict());
        for (String part : List.of("SM-2140 3-4-sleeve", "SM-2143 3-4-fork", "SM-2142 third-ring")) {
            String[] there = part.split(" ");
            assertEquals(
                    FitVerdict.FITS, serve(there[0], "plover-second", there[1]).verdict(), part);
        }
    }

    /** S039: the ring of the low range comes with the front half of the case. */
    @Test
    void S039_the_ring_of_the_low_range_is_not_to_be_had_alone() {
        Serving ring = serve("SM-5010", "greenshank", "ring");
        assertEquals(List.of(List.of("SM-5050")), companions(ring));
        assertTrue(failing(ring).contains("only-whole"));
    }
}
