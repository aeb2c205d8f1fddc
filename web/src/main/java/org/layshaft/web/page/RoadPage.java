package org.layshaft.web.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Gearing;
import org.layshaft.engine.road.Gradient;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.road.TopSpeed;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.MeasureSystem;
import org.layshaft.web.desk.RoadAnswer;
import org.layshaft.web.desk.RoadDesk;
import org.layshaft.web.desk.RoadRequest;
import org.layshaft.web.desk.RoadWording;
import org.layshaft.web.page.RoadView.FieldView;
import org.layshaft.web.page.RoadView.FormView;
import org.layshaft.web.page.RoadView.RowView;

/** The page of a box on the road. Thread-safe. */
public final class RoadPage {
    private static final String NONE = "–";

    private final Desk desk;
    private final RoadDesk road;
    private final Templates templates;

    RoadPage(Desk desk, Templates templates) {
        this.desk = desk;
        this.road = new RoadDesk(desk);
        this.templates = templates;
    }

    /** The page; what cannot be used is said on it, above the form to put it right in. */
    public Answered answer(RoadRequest request) {
        Layout layout = request.layout()
                .map(desk::layout)
                .orElseGet(() -> desk.knowledge().layouts().values().iterator().next());
        try {
            return Answered.with(templates.fill("road", view(request, road.drive(request))));
        } catch (BadInputException problem) {
            return new Answered(Optional.of(problem), templates.fill("road", refused(request, layout, problem)));
        }
    }

    private RoadView refused(RoadRequest request, Layout layout, BadInputException problem) {
        return new RoadView(
                layouts(layout, request),
                layout.name(),
                form(
                        request,
                        layout,
                        "us".equals(request.units().orElse("")) ? MeasureSystem.US : MeasureSystem.METRIC),
                problem.getMessage().lines().toList(),
                null,
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                RoadAddress.api(request, layout.id()));
    }

    private RoadView view(RoadRequest request, RoadAnswer answer) {
        RoadTable table = answer.table();
        return new RoadView(
                layouts(answer.layout(), request),
                answer.layout().name(),
                form(request, answer.layout(), answer.units()),
                List.of(),
                wheels(answer),
                answer.units().speed().sign(),
                speedAt(answer).orElse(null),
                table.rows().stream().map(row -> row(row, answer)).toList(),
                says(answer),
                RoadFigures.all(answer),
                RoadAddress.api(request, answer.layout().id()));
    }

    private List<PageView.LayoutView> layouts(Layout current, RoadRequest request) {
        return desk.knowledge().layouts().values().stream()
                .map(layout -> new PageView.LayoutView(
                        layout.name(),
                        layout.summary(),
                        "/road" + new Query().with("layout", layout.id()).with("units", request.units()),
                        layout.equals(current)))
                .toList();
    }

    private static FormView form(RoadRequest request, Layout layout, MeasureSystem units) {
        Road stated = layout.road().orElse(Road.NOTHING);
        boolean us = units == MeasureSystem.US;
        List<FieldView> facts = List.of(
                field("tyre", "Tyre", request.tyre(), stated.tyre(), "205/55 R16"),
                field(
                        "rolls",
                        "or rolls, mm a turn",
                        request.rolls(),
                        stated.rollingCircumferenceMm().isPresent()
                                ? Optional.of(stated.rollingCircumferenceMm().getAsInt())
                                : Optional.empty(),
                        "1930"),
                field("axle", "Axle ratio behind the box", request.axle(), stated.axleRatio(), "4.1"),
                field(
                        "mass",
                        us ? "Mass, kg, or with lb" : "Mass, kg",
                        request.mass(),
                        stated.massKg(),
                        us ? "3200 lb" : "1450"),
                field("efficiency", "Efficiency, 0 to 1", request.efficiency(), stated.efficiency(), "0.92"),
                field("rolling", "Rolling coefficient", request.rolling(), stated.rollingCoefficient(), "0.013"),
                field("drag", "Drag area, m²", request.drag(), stated.dragAreaM2(), "0.7"),
                field("air", "Air density, kg/m³", request.air(), stated.airDensityKgM3(), "1.2"),
                new FieldView(
                        "engine",
                        us
                                ? "Engine at full load: rpm and N·m, or with lb ft at the end"
                                : "Engine at full load: rpm and N·m",
                        request.engine().orElse(""),
                        stated.engine().isEmpty()
                                ? us ? "1000 110, 2600 177, 4000 125 lb ft" : "1000 150, 2600 240, 4000 170"
                                : "as stated: " + curve(stated),
                        true));
        List<FieldView> asked = List.of(
                new FieldView("revs", "Engine used between, rpm", request.revs().orElse(""), revs(stated), false),
                new FieldView(
                        "at",
                        "Road speed, " + units.speed().sign(),
                        request.at().orElse(""),
                        us ? "55" : "90",
                        false));
        String other = us ? "metric" : "us";
        return new FormView(
                layout.id(),
                units.word(),
                facts,
                asked,
                new LinkView(us ? "In km/h and N" : "In mph and lbf", RoadAddress.link(request.inUnits(other)), false),
                new LinkView(
                        "Forget what was told",
                        "/road" + new Query().with("layout", layout.id()).with("units", request.units()),
                        false));
    }

    private static FieldView field(
            String name, String label, Optional<String> written, Optional<?> stated, String like) {
        return new FieldView(
                name,
                label,
                written.orElse(""),
                stated.map(fact -> "as stated: " + fact).orElse(like),
                false);
    }

    private static String curve(Road stated) {
        return stated.engine().stream()
                .map(point ->
                        point.rpm().toPlainString() + " " + point.torqueNm().toPlainString())
                .collect(Collectors.joining(", "));
    }

    private static String revs(Road stated) {
        return stated.engine().isEmpty()
                ? "900-4000"
                : "as stated: %s-%s"
                        .formatted(
                                stated.engine().get(0).rpm().toPlainString(),
                                stated.engine()
                                        .get(stated.engine().size() - 1)
                                        .rpm()
                                        .toPlainString());
    }

    private static String wheels(RoadAnswer answer) {
        return answer.table()
                .tyre()
                .map(tyre -> "One turn of the wheels takes %s %d mm along (%s)."
                        .formatted(answer.layout().name(), tyre.mm(), tyre.basis()))
                .value()
                .orElseGet(() -> "How far one turn of the wheels takes %s %s."
                        .formatted(
                                answer.layout().name(),
                                answer.table().tyre().whyNot().orElseThrow()));
    }

    private static Optional<String> speedAt(RoadAnswer answer) {
        return answer.table()
                .kmh()
                .map(kmh -> Decimals.plain(answer.units().speed().fromKmh(kmh), 1) + " "
                        + answer.units().speed().sign());
    }

    private static RowView row(RoadTable.Row row, RoadAnswer answer) {
        // where several levers select, the next in the list may be a lower gear: that is no step up
        Optional<Gearing.Step> up = row.step().filter(step -> step.ratio().compareTo(Fraction.ONE) > 0);
        return new RowView(
                row.gear(),
                NumberView.of(row.ratio()),
                shown(row.overall().value(), 3),
                shown(up.map(Gearing.Step::ratio), 3),
                up.map(step -> percent(step.drop().toDouble() * 100, 0)).orElse(NONE),
                shown(row.kmhPer1000Rpm().value().map(answer.units().speed()::fromKmh), 1),
                shown(row.rpm().flatMap(Telling::value), 0),
                up.isPresent() ? shown(row.rpmAfterShiftUp().flatMap(Telling::value), 0) : NONE,
                row.steepest().value().map(RoadPage::slope).orElse(NONE));
    }

    private static List<String> says(RoadAnswer answer) {
        RoadTable table = answer.table();
        Stream<Optional<String>> all = Stream.of(
                table.rows().stream()
                        .findFirst()
                        .flatMap(row -> row.kmhPer1000Rpm().whyNot())
                        .map(why -> "Speeds " + why + "."),
                tooFast(answer),
                Optional.of(table.topSpeed()
                        .map(top -> top.map(each -> topSpeed(each, answer.units()))
                                .orElse("No gear keeps up a speed that the engine's curve covers."))
                        .value()
                        .orElseGet(() -> "Top speed and gradients %s."
                                .formatted(table.topSpeed().whyNot().orElseThrow()))),
                answer.speedometer().map(RoadWording::speedometer));
        return all.flatMap(Optional::stream).toList();
    }

    private static Optional<String> tooFast(RoadAnswer answer) {
        List<String> gears =
                answer.table().beyondTheCurve().stream().map(Names::gearName).toList();
        return gears.isEmpty()
                ? Optional.empty()
                : Optional.of("%s asks for more than %s rpm, where the engine's torque curve ends, in %s."
                        .formatted(
                                speedAt(answer).orElseThrow(),
                                shown(answer.table().fastestRpm(), 0),
                                Names.joined(gears)));
    }

    private static String topSpeed(TopSpeed top, MeasureSystem units) {
        return String.format(
                Locale.ROOT,
                "Top speed on the level %.1f %s in %s: %s.",
                units.speed(top.kmh()),
                units.speed().sign(),
                Names.gearName(top.gear()),
                RoadWording.endOf(top));
    }

    private static String slope(Gradient gradient) {
        if (gradient instanceof Gradient.Slope slope) {
            return percent(slope.percent(), 1);
        }
        return gradient instanceof Gradient.AnySlope ? "what the tyres hold" : "nothing";
    }

    private static String percent(double number, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f %%", number);
    }

    private static String shown(Optional<Fraction> number, int decimals) {
        return number.map(fraction -> Decimals.rounded(fraction, decimals).toPlainString())
                .orElse(NONE);
    }
}
