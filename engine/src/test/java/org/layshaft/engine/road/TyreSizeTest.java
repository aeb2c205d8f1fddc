package org.layshaft.engine.road;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.TyreSize.Build;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;

class TyreSizeTest {
    /** The geometric rule: rim times 25.4 and two sidewalls of width times height; diameters in tenths of a mm. */
    @ParameterizedTest
    @CsvSource({
        "205/55 R16,            6319, RADIAL",
        "205/55R16 91V,         6319, RADIAL",
        "205/55ZR16 (91Y) XL,   6319, RADIAL",
        "205 / 55 r 16,         6319, RADIAL",
        "P205/55R16,            6319, RADIAL",
        "205/55 ZRF16,          6319, RADIAL",
        "195/65 R15 91H,        6345, RADIAL",
        "LT235/75R15 104/101S,  7335, RADIAL",
        "195/70 R15C 104/102R,  6540, RADIAL",
        "235/75 R17.5 132/130M, 7970, RADIAL",
        "190/65 R390 89H,       6370, RADIAL",
        "130/90-16 67H,         6404, CROSS_PLY",
        "130/90B16 67H,         6404, BELTED",
        "31x10.50R15,           7874, RADIAL",
        "31X10.50 R15LT 109S,   7874, RADIAL",
        "31×10.50-15,           7874, CROSS_PLY",
    })
    void sizeCodes(String code, int tenthsOfMm, Build build) {
        TyreSize size = TyreSize.read(code);
        assertEquals(Fraction.of(tenthsOfMm, 10), size.freeDiameterMm());
        assertEquals(build, size.build());
    }

    @Test
    void theCodeIsKeptWithoutWhatFollowsIt() {
        assertEquals("205/55 R16", TyreSize.read("205/55 R16 91V").code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"155 R13", "155SR13 78S", "7.50-16", "7.50 R16"})
    void aCodeWithoutHeightIsNotGuessedAt(String code) {
        List<String> problems = problems(code);
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).contains("'" + code + "' does not say how high the sidewall is"), problems.get(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "big ones", "205/55", "R16", "205/55 R16; 91V", "205//55R16", "205-55-16-91"})
    void whatIsNoCodeIsRefused(String code) {
        assertEquals(
                List.of(
                        "'%s' is not a tyre size that can be read. Write it as in 205/55 R16 or 31x10.50R15, or state the rolling circumference in mm."
                                .formatted(code)),
                problems(code));
    }

    @Test
    void everythingThatMakesNoSenseIsSaidAtOnce() {
        assertEquals(
                List.of(
                        "The width in the tyre size 20/155 R61 is 20 mm. It must be from 60 to 500; look at the code again.",
                        "The height in the tyre size 20/155 R61 is 155 per cent of the width. It must be from 20 to 100; look at the code again.",
                        "The rim in the tyre size 20/155 R61 is 61 inches. It must be from 8 to 30; look at the code again."),
                problems("20/155 R61"));
        assertEquals(
                List.of("The tyre of 15X10.50R16 is no larger than its rim of 16 inches. Look at the code again."),
                problems("15x10.50R16"));
    }

    /** 3.05 × 631.9 is 1927.295; the free circumference is 1985.17, and 0.97 of it 1925.6. */
    @Test
    void rollingCircumferenceByConvention() {
        TyreSize size = TyreSize.read("205/55 R16");
        assertEquals(Optional.of(1927), RollingCircumference.of(size).value().map(RollingCircumference::mm));
        assertEquals(1985, RollingCircumference.of(size, RollingConvention.FREE).mm());
        RollingCircumference stated =
                RollingCircumference.of(size, RollingConvention.ofFreeCircumference(Fraction.of(97, 100)));
        assertEquals(1926, stated.mm());
        assertEquals("205/55 R16, 631.9 mm across: 0.97 of the free circumference, as stated", stated.basis());
    }

    @Test
    void noConventionIsTakenForATyreThatIsNotRadial() {
        assertEquals(
                Telling.missing("the dynamic factor of 130/90-16, a tyre that is not radial,"),
                RollingCircumference.of(TyreSize.read("130/90-16")));
    }

    @Test
    void figuresThatNoWheelHasAreRefused() {
        assertTrue(assertThrows(ImpossibleFactsException.class, () -> RollingCircumference.stated(316))
                .getMessage()
                .startsWith("The rolling circumference is 316 mm."));
        Fraction tooMuch = Fraction.of(97);
        assertTrue(assertThrows(ImpossibleFactsException.class, () -> RollingConvention.ofFreeCircumference(tooMuch))
                .getMessage()
                .startsWith("The dynamic factor of the tyre is 97."));
    }

    private static List<String> problems(String code) {
        return assertThrows(ImpossibleFactsException.class, () -> TyreSize.read(code))
                .problems();
    }
}
