package org.layshaft.engine.swap;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.ReadAt;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Road.SpeedRead;

/**
 * What a speedometer that read truly reads after a change. What matters is how often the place where the speed is read
 * turns for one turn of the wheels, whether gears of the layout lie between, or an axle that is only stated. In a layout
 * that reaches the wheels, the output of the gearbox is the shaft that the pinion of the final drive sits on.
 */
record SpeedReading(Installed before, Installed after, Change change) {

    Telling<SpeedometerChange> told() {
        Telling<Optional<SpeedometerChange.Change>> tyre =
                change.tyre().isEmpty() ? Telling.told(Optional.empty()) : tyres();
        // the ratio between the place and the wheels stands where that of an axle behind a gearbox would
        return tyre.with(
                between(),
                (wheels, growth) -> new SpeedometerChange(
                        wheels,
                        changed(Fraction.ONE, growth),
                        change.speedDrive().map(SpeedDrive::change),
                        stated().map(place -> ReadAt.GEARBOX_OUTPUT)));
    }

    private Telling<Optional<SpeedometerChange.Change>> tyres() {
        return before.vehicle()
                .tyre()
                .with(after.vehicle().tyre(), (was, is) -> changed(Fraction.of(was.mm()), Fraction.of(is.mm())));
    }

    private static Optional<SpeedometerChange.Change> changed(Fraction was, Fraction is) {
        return was.equals(is) ? Optional.empty() : Optional.of(new SpeedometerChange.Change(was, is));
    }

    private Optional<SpeedRead> stated() {
        return after.layout().road().flatMap(Road::speedRead);
    }

    /** At the place where the speed is read; where nobody has told which, at the first to which it makes a difference. */
    private Telling<Fraction> between() {
        return stated().map(this::growth)
                .orElseGet(() -> Stream.of(SpeedRead.values())
                        .map(this::growth)
                        .filter(growth -> !growth.equals(Telling.told(Fraction.ONE)))
                        .findFirst()
                        .orElse(Telling.told(Fraction.ONE)));
    }

    /** Turns of the place for one turn of the wheels, after over before. */
    private Telling<Fraction> growth(SpeedRead place) {
        boolean isBehind = !reachesWheels() && place == SpeedRead.DIFFERENTIAL;
        return place == SpeedRead.WHEELS || isBehind
                ? Telling.told(Fraction.ONE)
                : inside(place).with(behind(), Fraction::times);
    }

    private boolean reachesWheels() {
        return !before.layout().finalDrives().isEmpty();
    }

    private Telling<Fraction> behind() {
        Optional<Fraction> was = before.vehicle().gearing().behind();
        Optional<Fraction> is = after.vehicle().gearing().behind();
        return was.equals(is)
                ? Telling.told(Fraction.ONE)
                : Telling.of(is, "the axle ratio").with(Telling.of(was, "the axle ratio before"), Fraction::over);
    }

    private Telling<Fraction> inside(SpeedRead place) {
        if (!reachesWheels()) {
            return Telling.told(Fraction.ONE);
        }
        List<Telling<Fraction>> each = before.layout().finalDrives().stream()
                .flatMap(drive -> place == SpeedRead.DIFFERENTIAL ? Stream.of(drive.id()) : pinionShafts(drive))
                .distinct()
                .map(body -> turns(body, after).with(turns(body, before), Fraction::over))
                .toList();
        return Telling.all(each)
                .then(growths -> growths.stream().distinct().count() == 1
                        ? Telling.told(growths.get(0))
                        : Telling.missing("which of several shafts the speed is read from"));
    }

    private Stream<String> pinionShafts(Differential drive) {
        Layout layout = before.layout();
        return drive.ringGear()
                .map(ring -> layout.everyMesh()
                        .filter(mesh -> mesh.joins(ring))
                        .map(mesh -> layout.gear(mesh.other(ring)).carrier()))
                .orElseGet(() -> drive.shaft().stream());
    }

    private static Telling<Fraction> turns(String body, Installed box) {
        return Telling.of(
                box.box().gears().stream()
                        .findFirst()
                        .flatMap(gear -> gear.motion()
                                .speedOf(body)
                                .flatMap(speed -> gear.motion().ratio().map(speed::times)))
                        .map(Fraction::absolute),
                "a fixed ratio from %s to the wheels".formatted(body));
    }
}
