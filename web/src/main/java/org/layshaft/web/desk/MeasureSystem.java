package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedUnit;

/** What speeds, torques and forces are shown in. */
public enum MeasureSystem {
    METRIC("metric", SpeedUnit.KMH, "N·m", Fraction.ONE, "N", Fraction.ONE),
    US("us", SpeedUnit.MPH, "lb·ft", Pound.FOOT_NM, "lbf", Pound.FORCE_N);

    /** The international pound in standard gravity, 9.80665 m/s², and the foot of 0.3048 m. */
    static final class Pound {
        static final Fraction KG = Fraction.of(45_359_237L, 100_000_000L);
        static final Fraction FORCE_N = KG.times(Fraction.of(980_665, 100_000));
        static final Fraction FOOT_NM = FORCE_N.times(Fraction.of(3048, 10_000));

        private Pound() {}
    }

    private final String word;
    private final SpeedUnit speed;
    private final String torqueSign;
    private final Fraction torqueNm;
    private final String forceSign;
    private final Fraction forceN;

    MeasureSystem(
            String word, SpeedUnit speed, String torqueSign, Fraction torqueNm, String forceSign, Fraction forceN) {
        this.word = word;
        this.speed = speed;
        this.torqueSign = torqueSign;
        this.torqueNm = torqueNm;
        this.forceSign = forceSign;
        this.forceN = forceN;
    }

    /** Metric where nothing is written. Throws {@link BadInputException} for a word that is none of these. */
    static MeasureSystem called(Optional<String> written) {
        return written.map(String::strip)
                .map(text -> Arrays.stream(values())
                        .filter(system -> system.word.equalsIgnoreCase(text))
                        .findFirst()
                        .orElseThrow(() -> new BadInputException(
                                UNKNOWN,
                                "There are no units \"%s\". Write metric or us.".formatted(text),
                                List.of("metric", "us"))))
                .orElse(METRIC);
    }

    /** As written in an address: {@code us}. */
    public String word() {
        return word;
    }

    public SpeedUnit speed() {
        return speed;
    }

    /** {@code N·m} or {@code lb·ft}. */
    public String torqueSign() {
        return torqueSign;
    }

    public double torque(double nm) {
        return nm / torqueNm.toDouble();
    }

    /** {@code N} or {@code lbf}. */
    public String forceSign() {
        return forceSign;
    }

    public double force(double newtons) {
        return newtons / forceN.toDouble();
    }

    public double speed(double kmh) {
        return kmh / speed.toKmh(Fraction.ONE).toDouble();
    }
}
