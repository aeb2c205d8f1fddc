package org.layshaft.engine.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.exact.Fraction;

class GripTest {
    private static final Grip.Wheel ON_ICE = wheel("left", 100);
    private static final Grip.Wheel ON_TAR = wheel("right", 900);
    private static final Grip.Lock OPEN = new Grip.Open();

    @Test
    void openBothGetWhatTheWeakerCanTake() {
        assertEquals(shares(100, 100), axle(OPEN).sharesNm(nm(5000)));
        assertEquals(nm(200), axle(OPEN).mostNm());
    }

    @Test
    void lockedEachGetsWhatItCanTake() {
        assertEquals(shares(100, 900), axle(new Grip.Locked()).sharesNm(nm(5000)));
    }

    /** As long as nothing slips no lock makes a difference. */
    @Test
    void withGripEnoughAllShareAlike() {
        for (Grip.Lock lock : new Grip.Lock[] {OPEN, new Grip.Locked(), limited("80", "3")}) {
            assertEquals(shares(60, 60), axle(lock).sharesNm(nm(120)));
        }
    }

    @ParameterizedTest
    @CsvSource({
        ", 3, 300", // three times what the weaker wheel takes
        "80, , 180", // so much more than the weaker wheel takes
        "80, 3, 300", // the bias is more
        "250, 3, 350", // the preload is more
        ", 20, 900", // grip is the limit
    })
    void limitedSlipSendsMoreToTheWheelThatGrips(String preload, String bias, long ofGripping) {
        assertEquals(shares(100, ofGripping), axle(limited(preload, bias)).sharesNm(nm(5000)));
    }

    /** A wheel in the air leaves a torque-sensing differential nothing to multiply; a preload still holds. */
    @Test
    void withAWheelInTheAirOnlyPreloadAndLockHelp() {
        Grip.Wheel inTheAir = wheel("left", 0);
        assertEquals(nm(0), new Grip.Differential(inTheAir, ON_TAR, limited(null, "5")).mostNm());
        assertEquals(nm(80), new Grip.Differential(inTheAir, ON_TAR, limited("80", "5")).mostNm());
        assertEquals(nm(900), new Grip.Differential(inTheAir, ON_TAR, new Grip.Locked()).mostNm());
    }

    /** Three open differentials: the worst of four wheels rules all; locking the middle one saves the other axle. */
    @Test
    void differentialsNest() {
        Grip front = new Grip.Differential(wheel("front-left", 50), wheel("front-right", 700), OPEN);
        Grip rear = new Grip.Differential(wheel("rear-left", 800), wheel("rear-right", 800), OPEN);
        assertEquals(nm(200), new Grip.Differential(front, rear, OPEN).mostNm());
        assertEquals(nm(1700), new Grip.Differential(front, rear, new Grip.Locked()).mostNm());
        assertEquals(
                Map.of("front-left", nm(50), "front-right", nm(50), "rear-left", nm(800), "rear-right", nm(800)),
                new Grip.Differential(front, rear, new Grip.Locked()).sharesNm(nm(9000)));
    }

    /** An epicyclic centre differential that gives the front 35 for each 65 of the rear. */
    @Test
    void anUnequalDifferentialKeepsItsShare() {
        Grip centre = new Grip.Differential(wheel("front", 350), wheel("rear", 2000), Fraction.of(35, 65), OPEN);
        assertEquals(nm(1000), centre.mostNm());
        assertEquals(Map.of("front", nm(70), "rear", nm(130)), centre.sharesNm(nm(200)));
        assertEquals(Map.of("front", nm(350), "rear", nm(650)), centre.sharesNm(nm(4000)));
    }

    @Test
    void gripBelowZeroIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> wheel("left", -1));
    }

    private static Grip axle(Grip.Lock lock) {
        return new Grip.Differential(ON_ICE, ON_TAR, lock);
    }

    private static Grip.Lock limited(String preload, String bias) {
        return new Grip.LimitedSlip(fraction(preload), fraction(bias));
    }

    private static Optional<Fraction> fraction(String written) {
        return Optional.ofNullable(written).map(number -> nm(Long.parseLong(number)));
    }

    private static Map<String, Fraction> shares(long left, long right) {
        return Map.of("left", nm(left), "right", nm(right));
    }

    private static Grip.Wheel wheel(String id, long mostNm) {
        return new Grip.Wheel(id, nm(mostNm));
    }

    private static Fraction nm(long torque) {
        return Fraction.of(torque);
    }
}
