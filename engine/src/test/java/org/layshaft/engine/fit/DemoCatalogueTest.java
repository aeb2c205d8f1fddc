package org.layshaft.engine.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Sleeve;

/** The catalogue of the Saltmarsh parts counter: boxes whose own parts fit, and parts that only look as if they did. */
class DemoCatalogueTest {
    private static final PartsCounter COUNTER = PartsCounter.of(Boxes.knowledge());
    private static final Catalogue CATALOGUE = COUNTER.catalogue();

    /** Profile shifts are stated to four decimals. */
    private static final double ROUNDING_MM = 0.001;

    private static Serving serve(String box, String number, String place) {
        PartSet set = CATALOGUE.set(number).orElseThrow();
        BuiltBox built = COUNTER.boxes().get(box);
        return COUNTER.placements(set, built).stream()
                .filter(placement -> placement.parts().containsKey(place))
                .map(placement -> COUNTER.serve(placement, built))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void there_is_much_to_choose_from() {
        assertTrue(CATALOGUE.sets().size() >= 60, CATALOGUE.sets().size() + " sets");
        Map<String, Long> builds = CATALOGUE.builds().values().stream()
                .collect(Collectors.groupingBy(build -> build.layout(), Collectors.counting()));
        assertTrue(builds.size() >= 10, builds.toString());
        assertTrue(builds.values().stream().filter(count -> count > 1).count() >= 3, builds.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "curlew-early",
                "curlew-middle",
                "curlew-late",
                "plover-first",
                "plover-second",
                "plover-later",
                "lapwing-early",
                "lapwing-late",
                "knot",
                "stint",
                "snipe"
            })
    void every_part_fits_where_it_was_built_in(String box) {
        Map<String, String> unfit = new TreeMap<>();
        COUNTER.boxes().get(box).build().fitted().forEach((place, number) -> {
            Serving serving = serve(box, number, place);
            if (serving.verdict() != expected(number) || !failing(serving).isEmpty()) {
                unfit.put(place, serving.verdict().spoken() + " " + failing(serving));
            }
        });
        assertEquals(Map.of(), unfit);
    }

    /** Teeth alike and shafts across are not enough: the axes of the other drive stand 24 mm further apart. */
    @Test
    void a_speed_drive_serves_only_where_its_axes_meet() {
        assertEquals(
                FitVerdict.FITS,
                serve("curlew-early", "SM-1185", "speed-driven").verdict());
        assertEquals(
                FitVerdict.FITS, serve("greenshank", "SM-1182", "speed-driven").verdict());
        assertEquals(List.of("speed-centre"), failing(serve("redshank", "SM-1180", "speed-driven")));
        assertEquals(List.of("speed-centre"), failing(serve("plover-first", "SM-1180", "speed-driven")));
        assertEquals(List.of("speed-centre"), failing(serve("curlew-early", "SM-2165", "speed-driven")));
    }

    /** What is only sold whole wants the rest of it, though the like of that stands in the box. */
    private static FitVerdict expected(String number) {
        return COUNTER.boxes()
                        .values()
                        .iterator()
                        .next()
                        .fitted()
                        .onlyIn(CATALOGUE.part(number).orElseThrow())
                        .isEmpty()
                ? FitVerdict.FITS
                : FitVerdict.FITS_WITH;
    }

    private static List<String> failing(Serving serving) {
        return serving.failing()
                .map(judgement -> judgement.check().id())
                .filter(id -> !Set.of("only-whole", "lapped-pair").contains(id))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "curlew-early",
                "curlew-late",
                "plover-first",
                "lapwing-early",
                "whimbrel-early",
                "whimbrel-late",
                "greenshank",
                "bittern"
            })
    void profile_shifts_and_centre_distances_were_reckoned_by_another_hand(String box) {
        Fitted fitted = COUNTER.boxes().get(box).fitted();
        List<Mesh> meshes = fitted.layout()
                .everyMesh()
                .filter(mesh -> mesh.kind() != MeshKind.CHAIN)
                .filter(mesh -> Stream.of(mesh.first(), mesh.second())
                        .allMatch(gear -> fitted.at(gear).has(FactName.PROFILE_SHIFT)))
                .toList();
        assertTrue(meshes.size() >= 2, box);
        meshes.forEach(mesh -> {
            OptionalDouble free =
                    InvolutePair.centreMmWithoutBacklash(gear(fitted, mesh.first()), gear(fitted, mesh.second()));
            Facts stated = fitted.centre(axis(fitted, mesh.first()), axis(fitted, mesh.second()));
            assertEquals(number(stated, FactName.CENTRE_MM), free.orElseThrow(), ROUNDING_MM, mesh.toString());
        });
    }

    private static InvoluteGear gear(Fitted fitted, String place) {
        Facts facts = fitted.at(place);
        return InvoluteGear.of(
                facts.get(FactName.FORM).text().equals("internal") ? GearForm.INTERNAL : GearForm.EXTERNAL,
                (int) number(facts, FactName.TEETH),
                number(facts, FactName.MODULE_MM),
                number(facts, FactName.PRESSURE_ANGLE_DEG),
                number(facts, FactName.HELIX_DEG),
                number(facts, FactName.PROFILE_SHIFT));
    }

    private static String axis(Fitted fitted, String gear) {
        String carrier = fitted.layout().the(Gear.class, gear).carrier();
        return fitted.layout().find(Sleeve.class, carrier).map(Sleeve::shaft).orElse(carrier);
    }

    private static double number(Facts facts, FactName name) {
        return facts.get(name).number();
    }

    /** Box, part or set, one of its places there, the verdict, a check that fails, all units of the first remedy. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    curlew-early, SM-1423, third, FITS_WITH, helix-hand, SM-1413
                    curlew-early, SM-1223, third, FITS_WITH, pressure-angle, SM-1152 SM-1153 SM-1171
                    curlew-early, SM-1433, third, DOES_NOT_FIT, normal-module,
                    curlew-early, SM-1157, third, DOES_NOT_FIT, centre-distance,
                    curlew-early, SM-1441, 3-4-hub, DOES_NOT_FIT, hub-spline,
                    curlew-early, SM-1442, third-ring, DOES_NOT_FIT, cone-diameter,
                    curlew-early, SM-1103, output, FITS_WITH, needles-inside, SM-1162
                    curlew-early, SM-1121, first, FITS_WITH, needles-outside, SM-1162
                    curlew-middle, SM-1121, first, FITS, ,
                    curlew-early, SM-1323, third, FITS_WITH, backlash, SM-1313
                    curlew-early, SM-1324, third, FITS_WITH, backlash, SM-1314
                    curlew-early, SM-1154, third, FITS, ,
                    curlew-early, SM-1155, third, FITS, ,
                    curlew-early, SM-1227, cluster-reverse, FITS_WITH, only-whole, SM-1164
                    curlew-early, SM-1171, 3-4-sleeve, FITS_WITH, clutching-count, SM-1152 SM-1153
                    curlew-middle, SM-1452, second-ring, FITS_WITH, cone-type, SM-1222
                    curlew-early, SM-1923, third, CANNOT_BE_TOLD, ,
                    curlew-early, SM-9017, output-bearing, DOES_NOT_FIT, bearing-width,
                    plover-first, SM-2143, 3-4-fork, FITS_WITH, fork-play, SM-2151
                    plover-first, SM-2142, third-ring, FITS_WITH, one-design, SM-2151
                    plover-second, SM-2143, 3-4-fork, FITS, ,
                    plover-first, SM-2171, differential, FITS_WITH, half-shaft-spline, SM-2163
                    plover-first, SM-2161, output, FITS_WITH, needles-inside, SM-2111 SM-9111
                    lapwing-early, SM-3151, 5-6-hub, FITS_WITH, hub-spline, SM-3101
                    whimbrel-early, SM-6103, output, FITS_WITH, needles-inside, SM-6151 SM-9119
                    whimbrel-early, SM-6213, third, CANNOT_BE_TOLD, ,
                    knot, SM-4054, ring-gear, FITS, ,
                    knot, SM-4055, ring-gear, FITS_WITH, carrier-ratio, SM-4071
                    knot, SM-4056, ring-gear, FITS, ,
                    knot, SM-4019, drive-pinion, FITS_WITH, lapped-pair, SM-4054
                    bittern, SM-4452, ring-gear, FITS_WITH, carrier-ratio, SM-4471
                    bittern, SM-4453, ring-gear, FITS, ,
                    woodcock, SM-4351, ring-gear, CANNOT_BE_TOLD, ,
                    greenshank, SM-5010, ring, FITS_WITH, only-whole, SM-5050
                    greenshank, SM-5050, ring, FITS, ,
                    """)
    void what_looks_alike_is_told_apart(
            String box, String number, String place, FitVerdict verdict, String check, String remedy) {
        Serving serving = serve(box, number, place);
        assertEquals(verdict, serving.verdict());
        Set<String> failing =
                serving.failing().map(judgement -> judgement.check().id()).collect(Collectors.toSet());
        assertTrue(check == null ? failing.isEmpty() : failing.contains(check), failing.toString());
        Set<String> units = serving.companions().stream()
                .limit(1)
                .flatMap(companions -> companions.units().stream())
                .map(PartSet::number)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(remedy == null ? "" : remedy, String.join(" ", units));
    }

    @Test
    void a_number_leads_on_to_what_is_supplied() {
        SerialRange early = COUNTER.boxes().get("curlew-early").build().serials();
        SerialRange late = COUNTER.boxes().get("curlew-late").build().serials();
        assertEquals(Supply.End.WITHDRAWN, COUNTER.supply("SM-1042", early).end());
        assertEquals(
                2,
                COUNTER.supply("SM-1042", early).steps().stream()
                        .filter(step -> step.by().isPresent())
                        .count());
        assertEquals("SM-1021", COUNTER.supply("SM-1021", early).last());
        assertEquals("SM-1121", COUNTER.supply("SM-1021", late).last());
        assertTrue(COUNTER.supply("SM-1003", early).with().contains("SM-1121"));
        assertEquals("SM-5050", COUNTER.supply("SM-5110", SerialRange.ALL).last());
    }

    @Test
    void what_may_stand_in_for_another_is_stated_one_way() {
        assertEquals(List.of("SM-1042"), standIns("SM-1032"));
        assertEquals(List.of(), standIns("SM-1042"));
    }

    private static List<String> standIns(String number) {
        return COUNTER.supply(number, SerialRange.ALL).mayStandIn().stream()
                .map(each -> each.use())
                .toList();
    }

    @Test
    void every_part_is_built_in_or_sold_or_says_what_it_is() {
        Set<String> known = Stream.concat(
                        CATALOGUE.builds().values().stream().flatMap(build -> build.fitted().values().stream()),
                        CATALOGUE.sets().values().stream().flatMap(set -> set.parts().values().stream()))
                .collect(Collectors.toSet());
        List<String> loose = CATALOGUE.parts().values().stream()
                .filter(part -> !known.contains(part.number())
                        && part.name().equals(part.kind().spoken()))
                .map(CataloguePart::number)
                .toList();
        assertEquals(List.of(), loose);
    }
}
