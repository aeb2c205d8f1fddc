package org.layshaft.engine.stated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.exact.Fraction;

class TellingTest {
    private final Telling<Integer> mass = Telling.of(Optional.of(1200), "the mass");
    private final Telling<Integer> area = Telling.of(Optional.empty(), "the drag area");
    private final Telling<Integer> density = Telling.missing("the air density");

    @Test
    void whatIsStatedIsTold() {
        assertEquals(Telling.told(2400), mass.with(mass, Integer::sum));
        assertEquals(Optional.empty(), mass.whyNot());
    }

    @Test
    void whatIsMissingIsSaid() {
        assertEquals(
                Optional.of("cannot be told, the drag area is missing"),
                area.map(a -> 2 * a).whyNot());
    }

    @Test
    void allThatIsMissingIsSaidAtOnceAndEachOnce() {
        Telling<Integer> drag = area.with(density, (a, d) -> a * d);
        assertEquals(
                Optional.of("cannot be told, the drag area is missing, the air density is missing"),
                mass.with(drag, Integer::sum).with(area, Integer::sum).whyNot());
        assertEquals(
                List.of("the drag area is missing", "the air density is missing"),
                Telling.all(List.of(area, mass, density)).because());
        assertEquals(Telling.told(List.of(1200, 1200)), Telling.all(List.of(mass, mass)));
    }

    @Test
    void whatFollowsMayItselfLackAFact() {
        assertEquals(density, mass.then(m -> density));
        assertEquals(Telling.told("1200 kg"), mass.then(m -> Telling.told(m + " kg")));
    }

    @Test
    void impossibleFactsAreRefusedTogether() {
        Objections objections = new Objections()
                .unlessPositive(Optional.of(Fraction.of(-1, 2)), "the mass")
                .unlessPositive(Optional.empty(), "the drag area")
                .unless(1 > 2, "Two is %d.", 2);
        ImpossibleFactsException refused = assertThrows(ImpossibleFactsException.class, objections::refuse);
        assertEquals(List.of("The mass is -0.5. It must be more than 0.", "Two is 2."), refused.problems());
    }

    @Test
    void decimalsAreTakenExactlyAndShownShort() {
        assertEquals(Fraction.of(61, 20), Fraction.of(new BigDecimal("3.05")));
        assertEquals(Fraction.of(1200), Fraction.of(new BigDecimal("1.2e3")));
        assertEquals(Fraction.of(-1, 8), Fraction.of(new BigDecimal("-0.125")));
        assertEquals("631.9", Shown.decimal(Fraction.of(6319, 10)));
        assertEquals("0.333333", Shown.decimal(Fraction.of(1, 3)));
        assertEquals("1000", Shown.decimal(Fraction.of(1000)));
        assertEquals("0", Shown.decimal(Fraction.ZERO));
    }
}
