package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Layout;

class FittedGearsTest {
    private static final Layout CURLEW = Boxes.the("curlew");

    private static Facts teeth(int teeth, String hand) {
        return Facts.of(List.of(
                Fact.of(FactName.TEETH, teeth),
                Fact.of(FactName.MODULE_MM, 2.5),
                Fact.of(FactName.PRESSURE_ANGLE_DEG, 20),
                Fact.of(FactName.HELIX_DEG, 22),
                Fact.of(FactName.HAND, hand)));
    }

    private static CataloguePart gear(String number, Facts facts) {
        return new CataloguePart(number, ComponentKind.GEAR, number, facts, Map.of(), "");
    }

    private static CataloguePart shaft(String number, int third) {
        return new CataloguePart(
                number, ComponentKind.SHAFT, number, Facts.NONE, Map.of("cluster-third", teeth(third, "right")), "");
    }

    private static Fitted box() {
        Map<String, CataloguePart> parts = new LinkedHashMap<>();
        parts.put("third", gear("old", teeth(34, "left")));
        parts.put("countershaft", shaft("cluster", 37));
        return Fitted.of(CURLEW, parts);
    }

    @Test
    void a_gear_put_in_has_the_teeth_of_its_part() {
        Change change = FittedGears.change(box(), box().with(Map.of("third", gear("new", teeth(36, "left")))))
                .value()
                .orElseThrow();
        Gear third = change.gears().get("third");
        assertEquals(1, change.gears().size());
        assertEquals(36, third.teeth());
        assertEquals(OptionalDouble.of(2.5), third.moduleMm());
        assertEquals(Optional.of(Hand.LEFT), third.hand());
        assertEquals(CURLEW.gear("third").carrier(), third.carrier());
    }

    @Test
    void a_shaft_put_in_changes_the_gears_that_are_cut_on_it() {
        Change change = FittedGears.change(box(), box().with(Map.of("countershaft", shaft("later", 35))))
                .value()
                .orElseThrow();
        assertEquals(35, change.gears().get("cluster-third").teeth());
    }

    @Test
    void the_same_teeth_under_another_number_change_nothing() {
        assertEquals(
                Change.NONE,
                FittedGears.change(box(), box().with(Map.of("third", gear("new", teeth(34, "left")))))
                        .value()
                        .orElseThrow());
    }

    @Test
    void a_missing_fact_is_named() {
        Facts without = teeth(36, "left").without(FactName.HELIX_DEG);
        assertEquals(
                List.of("the helix angle of the third gear new is missing"),
                FittedGears.change(box(), box().with(Map.of("third", gear("new", without))))
                        .because());
    }

    @Test
    void other_speed_gears_are_a_change_of_the_speed_reading() {
        Fitted before = box().with(Map.of(
                Build.SPEED_DRIVING, gear("W", Facts.of(List.of(Fact.of(FactName.TEETH, 8)))),
                Build.SPEED_DRIVEN, gear("V", Facts.of(List.of(Fact.of(FactName.TEETH, 16))))));
        Fitted then =
                before.with(Map.of(Build.SPEED_DRIVEN, gear("U", Facts.of(List.of(Fact.of(FactName.TEETH, 17))))));
        assertEquals(
                Optional.of(new SpeedDrive(new SpeedGears(8, 16), new SpeedGears(8, 17))),
                FittedGears.change(before, then).value().orElseThrow().speedDrive());
    }

    @Test
    void a_layout_as_fitted_has_the_parts_teeth_and_else_its_own() {
        Layout fitted = FittedGears.layout(box().with(Map.of("third", gear("new", teeth(36, "left")))));
        assertEquals(36, fitted.gear("third").teeth());
        assertEquals(CURLEW.gear("second"), fitted.gear("second"));
        assertTrue(fitted.printedRatios().isEmpty());
    }
}
