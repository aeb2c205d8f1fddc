package org.layshaft.web.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedUnit;

/**
 * The numbers that a question gives with their units, as exact as they were typed.
 *
 * @param engineRpm turns of the engine a minute
 * @param speed road speed, in its unit
 * @param unit what the speed is told in; empty where none is told and none is asked for
 * @param hz a frequency
 * @param torqueNm of the engine, in N·m
 * @param axle ratio of the axle
 * @param ratios other ratios, in the order told
 * @param tyre size code, {@code 195/65 R15}
 * @param wheelMm outer diameter of a wheel with its tyre, in mm
 * @param teeth of a gear
 */
public record Given(
        Optional<Fraction> engineRpm,
        Optional<Fraction> speed,
        Optional<SpeedUnit> unit,
        Optional<Fraction> hz,
        Optional<Fraction> torqueNm,
        Optional<Fraction> axle,
        List<Fraction> ratios,
        Optional<String> tyre,
        Optional<Fraction> wheelMm,
        Optional<Fraction> teeth) {
    public static final Given NOTHING = new Given(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    public Given {
        ratios = List.copyOf(ratios);
    }

    public Optional<Fraction> kmh() {
        return speed.map(each -> unit.orElse(SpeedUnit.KMH).toKmh(each));
    }

    /** What this gives, and for the rest what another does; a speed told goes before an engine speed of the other. */
    public Given over(Given other) {
        boolean otherRunning = engineRpm.isPresent() || speed.isPresent();
        return new Given(
                engineRpm.or(() -> otherRunning ? Optional.empty() : other.engineRpm),
                speed.or(() -> otherRunning ? Optional.empty() : other.speed),
                unit.or(other::unit),
                hz.or(other::hz),
                torqueNm.or(other::torqueNm),
                axle.or(other::axle),
                ratios.isEmpty() ? other.ratios : ratios,
                tyre.or(other::tyre),
                wheelMm.or(other::wheelMm),
                teeth.or(other::teeth));
    }

    public boolean isNothing() {
        return equals(NOTHING);
    }

    /** {@code at 100 km/h with an axle of 3.7}; begins with a blank, or is empty. */
    public String says() {
        List<String> said = new ArrayList<>();
        teeth.ifPresent(each -> said.add("with " + plain(each) + " teeth"));
        hz.ifPresent(each -> said.add("of " + plain(each) + " Hz"));
        speed.ifPresent(each ->
                said.add("at " + plain(each) + " " + unit.orElse(SpeedUnit.KMH).sign()));
        engineRpm.ifPresent(each -> said.add("at " + plain(each) + " rpm"));
        torqueNm.ifPresent(each -> said.add("with " + plain(each) + " N·m"));
        axle.ifPresent(each -> said.add("with an axle of " + plain(each)));
        if (!ratios.isEmpty()) {
            said.add("with ratios of "
                    + ratios.stream().map(each -> plain(each) + " to 1").collect(Collectors.joining(" and ")));
        }
        tyre.ifPresent(each -> said.add("on " + each));
        wheelMm.ifPresent(each -> said.add("on tyres of " + plain(each) + " mm"));
        return said.isEmpty() ? "" : " " + String.join(" ", said);
    }

    /** With as many decimals as it needs, at most four. */
    public static String plain(Fraction number) {
        return Saying.plain(number, 4);
    }
}
