package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.words.Names;
import org.layshaft.web.chart.LineChart;
import org.layshaft.web.chart.LineChart.Line;
import org.layshaft.web.chart.LineChart.NameAt;
import org.layshaft.web.chart.LineChart.Point;
import org.layshaft.web.chart.LineChart.Sort;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.MeasureSystem;
import org.layshaft.web.desk.RoadAnswer;
import org.layshaft.web.desk.RoadAnswer.Against;
import org.layshaft.web.desk.RoadAnswer.GearPull;
import org.layshaft.web.desk.RoadAnswer.Tooth;
import org.layshaft.web.page.RoadView.FigureView;

/** The figures of a box on the road, each with the table of its numbers. */
final class RoadFigures {
    /** Of the line of what holds back, which is curved. */
    private static final int PIECES = 40;

    private final RoadAnswer answer;
    private final MeasureSystem units;
    private final String speed;

    private RoadFigures(RoadAnswer answer) {
        this.answer = answer;
        this.units = answer.units();
        this.speed = units.speed().sign();
    }

    static List<FigureView> all(RoadAnswer answer) {
        RoadFigures figures = new RoadFigures(answer);
        return List.of(LadderFigure.of(answer.box()), figures.saw(), figures.pull());
    }

    private FigureView saw() {
        String heading = "From gear to gear";
        return answer.teeth()
                .map(teeth -> new FigureView(
                        "saw",
                        heading,
                        new LineChart("Road speed, " + speed, "Engine, rpm", sawLines(teeth))
                                .svg(
                                        "saw",
                                        "Engine speed over road speed, %s shifted up at %s rpm"
                                                .formatted(
                                                        answer.layout().name(),
                                                        whole(teeth.get(0).toRpm())),
                                        sawWords(teeth)),
                        "Unbroken: a gear, its name at its upper end where there is room for it; the table names all. Dotted: the shift to the next, at one road speed.",
                        null,
                        List.of("Gear", "Taken at, rpm", "that is, " + speed, "Left at, rpm", "that is, " + speed),
                        teeth.stream()
                                .map(tooth -> List.of(
                                        Names.gearName(tooth.gear()),
                                        whole(tooth.fromRpm()),
                                        shownSpeed(tooth.fromKmh()),
                                        whole(tooth.toRpm()),
                                        shownSpeed(tooth.toKmh())))
                                .toList()))
                .value()
                .orElseGet(() -> untold("saw", heading, "Engine speed over road speed", answer.teeth()));
    }

    private List<Line> sawLines(List<Tooth> teeth) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < teeth.size(); i++) {
            Tooth tooth = teeth.get(i);
            lines.add(new Line(
                    tooth.gear(),
                    Sort.GEAR,
                    NameAt.END,
                    List.of(point(tooth.fromKmh(), tooth.fromRpm()), point(tooth.toKmh(), tooth.toRpm())),
                    "%s: from %s to %s %s"
                            .formatted(
                                    Names.gearName(tooth.gear()),
                                    shownSpeed(tooth.fromKmh()),
                                    shownSpeed(tooth.toKmh()),
                                    speed)));
            if (i + 1 < teeth.size()) {
                Tooth next = teeth.get(i + 1);
                lines.add(new Line(
                        "",
                        Sort.SHIFT,
                        NameAt.NOWHERE,
                        List.of(point(tooth.toKmh(), tooth.toRpm()), point(next.fromKmh(), next.fromRpm())),
                        "Shift to %s: from %s to %s rpm"
                                .formatted(Names.gearName(next.gear()), whole(tooth.toRpm()), whole(next.fromRpm()))));
            }
        }
        return lines;
    }

    private String sawWords(List<Tooth> teeth) {
        return String.join(
                " ",
                IntStream.range(1, teeth.size())
                        .mapToObj(i -> "At %s %s the shift to %s takes the engine from %s to %s rpm."
                                .formatted(
                                        shownSpeed(teeth.get(i).fromKmh()),
                                        speed,
                                        Names.gearName(teeth.get(i).gear()),
                                        whole(teeth.get(i - 1).toRpm()),
                                        whole(teeth.get(i).fromRpm())))
                        .toList());
    }

    private FigureView pull() {
        String heading = "Pull at the tyres, and what holds back";
        String unit = units.forceSign();
        return answer.pulls()
                .map(pulls -> new FigureView(
                        "pull",
                        heading,
                        new LineChart("Road speed, " + speed, "Tractive effort, " + unit, pullLines(pulls))
                                .svg(
                                        "pull",
                                        "Tractive effort of %s at full load"
                                                .formatted(answer.layout().name()),
                                        pullWords(pulls)),
                        answer.against()
                                .map(
                                        any ->
                                                "Unbroken: a gear at full load, its name at its strongest. Long dashes: what holds back on the level.")
                                .value()
                                .orElseGet(() ->
                                        "Unbroken: a gear at full load, its name at its strongest. What holds back on the level %s."
                                                .formatted(answer.against()
                                                        .whyNot()
                                                        .orElseThrow())),
                        null,
                        List.of(
                                "Gear",
                                "Strongest, " + unit,
                                "at, " + speed,
                                "At the end of the curve, " + unit,
                                "at, " + speed),
                        pulls.stream().map(this::pullRow).toList()))
                .value()
                .orElseGet(() -> untold("pull", heading, "Pull at the tyres", answer.pulls()));
    }

    private List<Line> pullLines(List<GearPull> pulls) {
        List<Line> lines = new ArrayList<>();
        double fastest = 0;
        for (GearPull pull : pulls) {
            List<Point> points = pull.points().stream()
                    .map(point -> new Point(units.speed(point.kmh().toDouble()), units.force(point.newtons())))
                    .toList();
            fastest =
                    Math.max(fastest, pull.points().get(points.size() - 1).kmh().toDouble());
            lines.add(new Line(
                    pull.gear(), Sort.GEAR, NameAt.HIGHEST, points, Names.gearName(pull.gear()) + " at full load"));
        }
        double end = fastest;
        answer.against().value().ifPresent(against -> lines.add(againstLine(against, end)));
        return lines;
    }

    private Line againstLine(Against against, double fastestKmh) {
        return new Line(
                "level road",
                Sort.AGAINST,
                NameAt.END,
                IntStream.rangeClosed(0, PIECES)
                        .mapToDouble(piece -> fastestKmh * piece / PIECES)
                        .mapToObj(kmh -> new Point(units.speed(kmh), units.force(against.newtons(kmh))))
                        .toList(),
                "What holds back on the level");
    }

    private List<String> pullRow(GearPull pull) {
        var strongest = pull.points().stream()
                .max((one, other) -> Double.compare(one.newtons(), other.newtons()))
                .orElseThrow();
        var last = pull.points().get(pull.points().size() - 1);
        return List.of(
                Names.gearName(pull.gear()),
                force(strongest.newtons()),
                shownSpeed(strongest.kmh()),
                force(last.newtons()),
                shownSpeed(last.kmh()));
    }

    private String pullWords(List<GearPull> pulls) {
        return String.join(
                " ",
                pulls.stream()
                        .map(this::pullRow)
                        .map(row -> "%s pulls with up to %s %s, at %s %s."
                                .formatted(row.get(0), row.get(1), units.forceSign(), row.get(2), speed))
                        .toList());
    }

    private static FigureView untold(String id, String heading, String what, Telling<?> telling) {
        return new FigureView(
                id,
                heading,
                "",
                null,
                "%s %s. Tell it in the form above."
                        .formatted(what, telling.whyNot().orElseThrow()),
                List.of(),
                List.of());
    }

    private Point point(Fraction kmh, Fraction rpm) {
        return new Point(units.speed(kmh.toDouble()), rpm.toDouble());
    }

    private String shownSpeed(Fraction kmh) {
        return Decimals.rounded(units.speed().fromKmh(kmh), 1).toPlainString();
    }

    private static String whole(Fraction number) {
        return Decimals.rounded(number, 0).toPlainString();
    }

    private String force(double newtons) {
        return String.format(Locale.ROOT, "%.0f", units.force(newtons));
    }
}
