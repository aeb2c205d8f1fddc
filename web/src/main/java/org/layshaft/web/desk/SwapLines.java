package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing.Step;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.Comparison;
import org.layshaft.engine.swap.GearComparison;
import org.layshaft.engine.swap.GearFigures;
import org.layshaft.engine.swap.PairComparison;
import org.layshaft.engine.swap.ThrustComparison;
import org.layshaft.engine.teeth.Thrust;
import org.layshaft.engine.teeth.ThrustSeat;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** Every figure of a comparison as lines, gear by gear. */
public final class SwapLines {
    /** What the line of a gear's ratio is called. */
    public static final String RATIO = "ratio";

    private static final String NONE = "–";

    private final Layout layout;
    private final Units units;
    private final List<SwapLine> lines = new ArrayList<>();

    private SwapLines(Layout layout, Units units) {
        this.layout = layout;
        this.units = units;
    }

    public static List<SwapLine> of(Comparison comparison) {
        return of(comparison, Units.METRIC);
    }

    public static List<SwapLine> of(Comparison comparison, Units units) {
        SwapLines lines = new SwapLines(comparison.before().layout(), units);
        comparison.gears().forEach(lines::gear);
        comparison.pairs().forEach(lines::pair);
        return lines.lines;
    }

    private void gear(GearComparison gear) {
        String name = gear.before().or(gear::after).map(GearFigures::gear).orElse(NONE);
        add(name, "name", gear, figures -> Telling.told(figures.gear()));
        add(name, RATIO, gear, figures -> Telling.told(Decimals.three(figures.ratio())));
        add(name, "step to the next gear", gear, figures -> Telling.told(step(figures)));
        add(
                name,
                units.speedSign() + " at 1000 rpm",
                gear,
                figures -> figures.road().kmhPer1000Rpm().map(kmh -> units.speed(kmh, 1)));
        add(
                name,
                "rpm at the cruising speed",
                gear,
                figures -> figures.rpmAtCruise().map(rpm -> shown(rpm, 0)));
        add(
                name,
                "rpm after the shift up",
                gear,
                figures -> figures.rpmAfterShiftUp()
                        .map(told -> told.map(rpm -> shown(rpm, 0)))
                        .orElse(Telling.told(NONE)));
        add(
                name,
                "torque at the wheels, " + units.torqueSign(),
                gear,
                figures -> figures.wheelTorqueNm().map(units::torque));
        meshes(name, gear);
        if (gear.before().or(gear::after).flatMap(each -> each.forces().value()).isPresent()) {
            gear.thrusts().forEach(thrust -> thrust(name, thrust));
        }
    }

    private static String step(GearFigures figures) {
        return figures.road().step().map(Step::ratio).map(Decimals::three).orElse(NONE);
    }

    private void meshes(String name, GearComparison gear) {
        Set<String> meshes = new TreeSet<>();
        Stream.of(gear.before(), gear.after())
                .flatMap(Optional::stream)
                .forEach(figures -> meshes.addAll(figures.meshes().keySet()));
        for (String mesh : meshes) {
            add(
                    name,
                    "order of the mesh %s".formatted(mesh),
                    gear,
                    figures -> Telling.told(Optional.ofNullable(figures.meshes().get(mesh))
                            .map(Decimals::three)
                            .orElse(NONE)));
        }
    }

    private void thrust(String gear, ThrustComparison thrust) {
        line(
                gear,
                "thrust on the %s".formatted(nameOf(thrust.shaft())),
                thrust.before().with(thrust.takenBefore(), SwapLines::said),
                thrust.after().with(thrust.takenAfter(), SwapLines::said));
    }

    private String nameOf(String id) {
        return layout.find(Part.class, id).map(Part::name).orElse(id);
    }

    private static String said(Thrust thrust, ThrustSeat seat) {
        String toward =
                thrust.toward().map(side -> " N toward the " + side.word()).orElse(" N");
        return String.format(Locale.ROOT, "%.0f", thrust.newtons()) + toward + taken(seat);
    }

    private static String taken(ThrustSeat seat) {
        if (seat instanceof ThrustSeat.OneBearing one) {
            return ", taken by " + one.name();
        } else if (seat instanceof ThrustSeat.OneOf several) {
            return ", taken by one of " + String.join(", ", several.bearings());
        } else if (seat instanceof ThrustSeat.NoBearing) {
            return ", taken by no bearing";
        }
        return seat instanceof ThrustSeat.TheCase ? ", taken by the case" : "";
    }

    private void pair(PairComparison pair) {
        line(
                "",
                "transverse contact ratio of %s with %s"
                        .formatted(
                                nameOf(pair.mesh().first()), nameOf(pair.mesh().second())),
                pair.contactBefore().map(SwapLines::three),
                pair.contactAfter().map(SwapLines::three));
    }

    private static String three(double number) {
        return String.format(Locale.ROOT, "%.3f", number);
    }

    private void add(String name, String what, GearComparison gear, Function<GearFigures, Telling<String>> figure) {
        line(
                name,
                what,
                gear.before().map(figure).orElse(Telling.told(NONE)),
                gear.after().map(figure).orElse(Telling.told(NONE)));
    }

    private void line(String gear, String what, Telling<String> before, Telling<String> after) {
        lines.add(new SwapLine(
                gear,
                what,
                before.value().orElse(NONE),
                after.value().orElse(NONE),
                Stream.concat(before.because().stream(), after.because().stream())
                        .distinct()
                        .toList()));
    }

    private static String shown(Fraction number, int decimals) {
        return Decimals.rounded(number, decimals).toPlainString();
    }
}
