package org.layshaft.engine.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.layshaft.engine.teeth.SomeTeeth.helical;
import static org.layshaft.engine.teeth.SomeTeeth.internal;
import static org.layshaft.engine.teeth.SomeTeeth.spur;
import static org.layshaft.engine.teeth.SomeTeeth.straightBevel;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Side;

class MissingOrImpossibleTest {

    @Test
    void everyMissingFactIsNamed() {
        assertEquals(
                List.of(
                        "the module of a and b is missing",
                        "the helix angle of a and b is missing",
                        "the hand of a and b is missing",
                        "the pressure angle of a and b is missing"),
                new LoadedPair(bare("a", GearForm.EXTERNAL), bare("b", GearForm.EXTERNAL), 100, Turn.CLOCKWISE)
                        .forces()
                        .because());
        assertEquals(
                List.of(
                        "the module of a and b is missing",
                        "the helix angle of a and b is missing",
                        "the hand of a and b is missing",
                        "the pressure angle of a and b is missing",
                        "the angle between the shafts of a and b is missing",
                        "the end of its shaft that the point of a lies toward is missing",
                        "the face width of a and b is missing",
                        "the end of its shaft that the point of b lies toward is missing"),
                new LoadedPair(bare("a", GearForm.BEVEL), bare("b", GearForm.BEVEL), 100, Turn.CLOCKWISE)
                        .forces()
                        .because());
    }

    @Test
    void onlyTheHandIsMissing() {
        Toothing pinion = Toothing.external("the pinion", 25, 4, 20, Optional.empty(), 20);
        Toothing gear = Toothing.external("the gear", 50, 4, 20, Optional.empty(), 20);
        assertEquals(
                Optional.of("cannot be told, the hand of the pinion and the gear is missing"),
                new LoadedPair(pinion, gear, 100, Turn.CLOCKWISE).forces().whyNot());
    }

    /** What must be alike on both is told by either; the hand of the other follows. */
    @Test
    void oneOfBothIsEnough() {
        LoadedPair whole =
                new LoadedPair(helical("a", 25, Hand.RIGHT), helical("b", 50, Hand.LEFT), 100, Turn.CLOCKWISE);
        LoadedPair half =
                new LoadedPair(bare("a", GearForm.EXTERNAL), helical("b", 25, Hand.LEFT), 100, Turn.CLOCKWISE);
        assertEquals(
                whole.forces().value().orElseThrow().onDriver(),
                half.forces().value().orElseThrow().onDriver());
        LoadedPair inRing =
                new LoadedPair(bare("a", GearForm.EXTERNAL), internal("b", 75, Hand.RIGHT), 100, Turn.CLOCKWISE);
        assertEquals(
                whole.forces().value().orElseThrow().onDriver(),
                inRing.forces().value().orElseThrow().onDriver());
    }

    /** F-10: gears.com.pk, helical gears: external gears on parallel shafts have opposite hands; internal ones the same. */
    @Test
    void f10HandsThatCannotMesh() {
        assertEquals(
                List.of("a and b cannot mesh: their helices are of the same hand. They must be of opposite hands."),
                problems(helical("a", 25, Hand.RIGHT), helical("b", 50, Hand.RIGHT)));
        assertEquals(
                List.of("a and b cannot mesh: a gear and its internal gear must have helices of the same hand."),
                problems(helical("a", 25, Hand.RIGHT), internal("b", 75, Hand.LEFT)));
    }

    @Test
    void everythingThatKeepsThemApartIsSaid() {
        assertEquals(
                List.of(
                        "a and b cannot mesh: their modules are 3.0 and 4.0 mm. They must be equal.",
                        "a and b cannot mesh: their helix angles are 0.0 and 20.0 degrees. They must be equal."),
                problems(spur("a", 25, 3), helical("b", 50, Hand.RIGHT)));
        assertEquals(
                List.of("a and b cannot mesh: their teeth are bevel and external."),
                problems(straightBevel("a", 20, 4, 20, 10, Side.REAR), spur("b", 20, 4)));
        assertEquals(
                List.of("a and b cannot mesh: both have their teeth on the inside."),
                problems(internal("a", 70, Hand.LEFT), internal("b", 75, Hand.LEFT)));
    }

    @Test
    void chainsAndHypoidPairsAreNotReckoned() {
        assertEquals(
                Optional.of("cannot be told, a and b share a chain, whose pull is no force between teeth"),
                new LoadedPair(bare("a", GearForm.SPROCKET), bare("b", GearForm.SPROCKET), 100, Turn.CLOCKWISE)
                        .forces()
                        .whyNot());
        Toothing pinion = SomeTeeth.bevel("a", 11, 5, 45, Optional.of(Hand.LEFT), 20, 30, Side.REAR);
        Toothing crown = SomeTeeth.bevel("b", 41, 5, 33, Optional.of(Hand.RIGHT), 20, 30, Side.FRONT);
        assertEquals(
                Optional.of("cannot be told, the spiral angles of a and b differ, as those of a hypoid pair do,"
                        + " whose forces are not reckoned here"),
                new LoadedPair(pinion, crown, 100, Turn.CLOCKWISE).forces().whyNot());
    }

    @Test
    void impossibleFiguresAreRefusedTogether() {
        ImpossibleFactsException refused = assertThrows(
                ImpossibleFactsException.class, () -> Toothing.external("a", 0, -1, 75, Optional.empty(), 90));
        assertEquals(
                List.of(
                        "a has 0 teeth. It must have more than 0.",
                        "The module of a is -1.0 mm. It must be more than 0.",
                        "The helix angle of a is 75.0 degrees. It must be from 0 to below 60; its hand says which way it winds.",
                        "The pressure angle of a is 90.0 degrees. It must be more than 0 and below 45."),
                refused.problems());
        Toothing a = spur("a", 20, 3);
        assertThrows(ImpossibleFactsException.class, () -> new LoadedPair(a, a, -5, Turn.CLOCKWISE));
    }

    private static List<String> problems(Toothing driver, Toothing driven) {
        LoadedPair pair = new LoadedPair(driver, driven, 100, Turn.CLOCKWISE);
        return assertThrows(ImpossibleFactsException.class, pair::forces).problems();
    }

    private static Toothing bare(String name, GearForm form) {
        return new Toothing(
                name,
                form,
                25,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }
}
