package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Side;

class PowerPathTest {

    static Stream<Layout> demos() {
        return Boxes.demos();
    }

    private static List<String> ways(Layout layout, Stance stance) {
        return Picture.of(Drawing.of(layout, Boxes.moving(layout, stance)).svg())
                .values("data-way");
    }

    @Test
    void thirdGoesDownToTheCountershaftAndBack() {
        assertEquals(
                List.of("clutch input input-gear cluster-driven countershaft cluster-third third third-clutching-teeth "
                        + "3-4-sleeve 3-4-hub output"),
                ways(Boxes.demo("curlew"), Stance.NEUTRAL.with("3-4-sleeve", Side.REAR)));
    }

    @Test
    void directDriveLeavesTheCountershaftOut() {
        assertEquals(
                List.of("clutch input input-gear input-gear-clutching-teeth 5-R-sleeve 5-R-hub output"),
                ways(Boxes.demo("curlew"), Stance.NEUTRAL.with("5-R-sleeve", Side.FRONT)));
    }

    @Test
    void reversePassesTheIdler() {
        assertEquals(
                List.of("clutch input input-gear cluster-driven countershaft cluster-reverse reverse-idler reverse "
                        + "reverse-clutching-teeth 5-R-sleeve 5-R-hub output"),
                ways(Boxes.demo("curlew"), Stance.NEUTRAL.with("5-R-sleeve", Side.REAR)));
    }

    @Test
    void transaxleDrivesBothWheels() {
        String common = "clutch input input-first first first-clutching-teeth 1-2-sleeve 1-2-hub output "
                + "final-drive-pinion ring-gear differential ";
        assertEquals(
                List.of(common + "left-half-shaft", common + "right-half-shaft"),
                ways(Boxes.demo("plover"), Stance.NEUTRAL.with("1-2-sleeve", Side.FRONT)));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyPartThatCarriesLiesOnTheLineInTheOrderOfTheMotion(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            Motion motion = Boxes.motion(layout, stance);
            PowerPath path = PowerPath.of(new Plan(layout, stance), motion);
            assertEquals(motion.outcome() == Motion.Outcome.DRIVES, !path.ways().isEmpty());
            List<String> carrying = motion.carrying().stream()
                    .filter(layout.parts()::containsKey)
                    .toList();
            assertTrue(carrying.stream().allMatch(path::passes), carrying + " on " + path);
            for (List<String> way : path.ways()) {
                List<String> bodies = way.stream().filter(carrying::contains).toList();
                assertEquals(carrying.stream().filter(bodies::contains).toList(), bodies);
            }
        }
    }

    @Test
    void theLineRunsThroughTheGearsItNames() {
        Layout layout = Boxes.demo("curlew");
        Stance stance = Stance.NEUTRAL.with("1-2-sleeve", Side.REAR);
        Plan plan = new Plan(layout, stance);
        Surroundings around = Surroundings.of(plan);
        Figures figures = new Figures(plan, around);
        List<String> way =
                PowerPath.of(plan, Boxes.motion(layout, stance)).ways().get(0);
        List<Point> points = new PathLine(plan, around, figures).points(way);
        int last = -1;
        for (String gear : List.of("input-gear", "cluster-driven", "cluster-first", "first")) {
            Box box = plan.gearBox(gear);
            int at = last + 1;
            while (at < points.size()
                    && !points.get(at)
                            .near(box.nearest(points.get(at).x(), points.get(at).y()))) {
                at++;
            }
            assertTrue(at < points.size(), gear);
            last = at;
        }
        assertEquals(around.outputX(), points.get(points.size() - 1).x(), 1e-6);
    }

    @Test
    void aSeizedGearCarriesStraightToItsShaft() {
        Layout layout = Boxes.demo("curlew");
        Set<String> carrying =
                Set.of("input", "input-gear", "cluster-driven", "countershaft", "cluster-third", "third", "output");
        Motion sound = Boxes.motion(layout, Stance.NEUTRAL.with("3-4-sleeve", Side.REAR));
        Motion seized = new Motion(Motion.Outcome.DRIVES, sound.speeds(), carrying, sound.ratio());
        PowerPath path = PowerPath.of(new Plan(layout, Stance.NEUTRAL), seized);
        assertEquals(
                List.of(List.of(
                        "clutch",
                        "input",
                        "input-gear",
                        "cluster-driven",
                        "countershaft",
                        "cluster-third",
                        "third",
                        "output")),
                path.ways());
    }

    @Test
    void wordsTellThePath() {
        Layout layout = Boxes.demo("curlew");
        Picture picture =
                Picture.of(Drawing.of(layout, Boxes.moving(layout, Stance.NEUTRAL.with("3-4-sleeve", Side.REAR)))
                        .svg());
        String says = Picture.first(picture.root(), "desc").getTextContent();
        Optional<String> names = Stream.of(
                        "input shaft",
                        "cluster driven gear",
                        "countershaft",
                        "third gear",
                        "3-4 sleeve",
                        "output shaft")
                .reduce((before, name) -> says.indexOf(before) < says.indexOf(name) ? name : "none");
        assertEquals("output shaft", names.orElseThrow(), says);
        assertFalse(says.contains("fourth"));
        assertTrue(layout.all(Part.class).count() > 20);
    }
}
