package org.layshaft.web.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.w3c.dom.Element;

class LabelsTest {

    static Stream<Layout> demos() {
        return Boxes.demos();
    }

    private static List<Name> names(Layout layout, Stance stance) {
        return Name.all(Drawing.of(layout, Boxes.moving(layout, stance)));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void namesDoNotCoverEachOther(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            List<Name> names = names(layout, stance);
            for (Name one : names) {
                for (Name other : names) {
                    boolean same = one == other;
                    assertTrue(
                            same || one.box().grown(-1).shared(other.box()) == 0, one + " on " + other + " " + stance);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void noNameCrossesTheOutlineOfTheCase(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            Box box = Surroundings.of(new Plan(layout, stance)).caseBox();
            for (Name name : names(layout, stance)) {
                double inside = name.box().shared(box);
                double whole = name.box().width() * name.box().height();
                assertTrue(inside < 0.01 || whole - inside < 0.01, name + " " + stance);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void noNameCoversTheStemOfAFork(Layout layout) {
        for (Stance stance : Boxes.stances(layout)) {
            Plan plan = new Plan(layout, stance);
            List<Box> stems =
                    new SelectorFigures(plan, Surroundings.of(plan)).stems().toList();
            for (Name name : names(layout, stance)) {
                stems.forEach(stem -> assertEquals(0, name.box().grown(-1).shared(stem), name + " " + stance));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyGearIsNamedNearItself(Layout layout) {
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        List<Name> names = names(layout, Stance.NEUTRAL);
        layout.all(Gear.class).forEach(gear -> {
            Box box = plan.gearBox(gear.id());
            double nearest = names.stream()
                    .filter(name -> gear.name().startsWith(name.text()))
                    .mapToDouble(name -> {
                        Point from = name.box().nearest(box.x(), box.y());
                        Point to = box.nearest(from.x(), from.y());
                        return Math.hypot(from.x() - to.x(), from.y() - to.y());
                    })
                    .min()
                    .orElseThrow(() -> new AssertionError(gear.name() + " among " + names));
            assertTrue(nearest < 70, gear.name() + " " + nearest);
        });
    }

    @ParameterizedTest
    @MethodSource("demos")
    void teethStandInTheGearsThatHaveRoom(Layout layout) {
        Picture picture = Picture.of(Drawing.of(layout, View.plain()).svg());
        Plan plan = new Plan(layout, Stance.NEUTRAL);
        layout.all(Gear.class).filter(gear -> plan.radius(gear.id()) > 45).forEach(gear -> {
            Element text = Picture.first(picture.part(gear.id()), "text");
            assertEquals("" + gear.teeth(), text.getTextContent());
        });
    }
}
