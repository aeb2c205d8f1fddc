package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing.Step;
import org.layshaft.engine.road.Gradient;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.engine.road.TopSpeed;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.RoadAnswer;
import org.layshaft.web.desk.RoadAnswer.Tooth;
import org.layshaft.web.desk.RoadWording;

/** What every gear comes to on the road, as plain text; what cannot be told is a dash, and said below why. */
final class RoadText {
    private static final String NONE = "-";

    private final RoadTable table;
    private final SpeedUnit unit;

    private RoadText(RoadTable table, SpeedUnit unit) {
        this.table = table;
        this.unit = unit;
    }

    static String of(RoadAnswer answer) {
        RoadText text = new RoadText(answer.table(), answer.units().speed());
        TextPage page = new TextPage().paragraph(text.wheels(answer.layout())).block(text.gears());
        page.list("On the level and uphill, at full load:", text.strength());
        page.list("Up through the gears:", text.shifts(answer.teeth()));
        answer.speedometer().ifPresent(error -> page.paragraph(RoadWording.speedometer(error)));
        return page.toString();
    }

    private String wheels(Layout layout) {
        return table.tyre()
                .map(tyre -> "%s rolls %d mm in one turn of the wheels (%s)."
                        .formatted(layout.name(), tyre.mm(), tyre.basis()))
                .value()
                .orElseGet(() -> "How far %s rolls in one turn of the wheels %s."
                        .formatted(layout.name(), table.tyre().whyNot().orElseThrow()));
    }

    private String gears() {
        List<String> headings =
                new ArrayList<>(List.of("gear", "ratio", "overall", "step", "drop", unit.sign() + " per 1000 rpm"));
        speed().ifPresent(at -> headings.addAll(List.of("rpm at " + at, "after shift up")));
        headings.add("climbs");
        TextTable lines = new TextTable(headings.toArray(String[]::new));
        table.rows().forEach(row -> lines.row(cells(row)));
        return lines.toString();
    }

    private List<String> cells(RoadTable.Row row) {
        List<String> cells = new ArrayList<>(List.of(
                row.gear(),
                Decimals.three(row.ratio()),
                shown(row.overall().value(), 3),
                shown(row.step().map(Step::ratio), 3),
                row.step().map(step -> percent(step.drop().toDouble() * 100, 0)).orElse(NONE),
                shown(row.kmhPer1000Rpm().value().map(unit::fromKmh), 1)));
        if (table.kmh().isPresent()) {
            cells.add(shown(row.rpm().flatMap(Telling::value), 0));
            cells.add(shown(row.rpmAfterShiftUp().flatMap(Telling::value), 0));
        }
        cells.add(row.steepest().value().map(RoadText::slope).orElse(NONE));
        return cells;
    }

    private Optional<String> tooFast() {
        List<String> gears =
                table.beyondTheCurve().stream().map(Names::gearName).toList();
        return gears.isEmpty()
                ? Optional.empty()
                : Optional.of("%s asks for more than %s rpm, where the engine's torque curve ends, in: %s."
                        .formatted(speed().orElseThrow(), shown(table.fastestRpm(), 0), String.join(", ", gears)));
    }

    private List<String> shifts(Telling<List<Tooth>> teeth) {
        return teeth.map(all -> IntStream.range(1, all.size())
                        .mapToObj(i -> "into %s at %s %s: from %s to %s rpm"
                                .formatted(
                                        Names.gearName(all.get(i).gear()),
                                        Decimals.rounded(unit.fromKmh(all.get(i).fromKmh()), 1),
                                        unit.sign(),
                                        Decimals.rounded(all.get(i - 1).toRpm(), 0),
                                        Decimals.rounded(all.get(i).fromRpm(), 0)))
                        .toList())
                .value()
                .orElseGet(() -> List.of("That %s.".formatted(teeth.whyNot().orElseThrow())));
    }

    private Optional<String> speed() {
        return table.kmh().map(kmh -> Decimals.rounded(unit.fromKmh(kmh), 1) + " " + unit.sign());
    }

    private List<String> strength() {
        Telling<Fraction> speeds = table.rows().isEmpty()
                ? Telling.told(Fraction.ZERO)
                : table.rows().get(0).kmhPer1000Rpm();
        List<String> items = new ArrayList<>();
        speeds.whyNot().ifPresent(why -> items.add("Speeds " + why + "."));
        tooFast().ifPresent(items::add);
        items.add(table.topSpeed()
                .map(top -> top.map(this::topSpeed).orElse("No gear keeps up a speed that the engine's curve covers."))
                .value()
                .orElseGet(() -> "Top speed and gradients %s."
                        .formatted(table.topSpeed().whyNot().orElseThrow())));
        return items;
    }

    private String topSpeed(TopSpeed top) {
        String end = RoadWording.endOf(top);
        double speed = top.kmh() / unit.toKmh(Fraction.ONE).toDouble();
        return String.format(
                Locale.ROOT, "Top speed %.1f %s in %s: %s.", speed, unit.sign(), Names.gearName(top.gear()), end);
    }

    private static String slope(Gradient gradient) {
        if (gradient instanceof Gradient.Slope slope) {
            return percent(slope.percent(), 1);
        }
        return gradient instanceof Gradient.AnySlope ? "what the tyres hold" : "nothing";
    }

    private static String percent(double number, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f%%", number);
    }

    private static String shown(Optional<Fraction> number, int decimals) {
        return number.map(fraction -> Decimals.rounded(fraction, decimals).toPlainString())
                .orElse(NONE);
    }
}
