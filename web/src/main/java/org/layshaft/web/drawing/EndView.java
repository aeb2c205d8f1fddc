package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Shaft;

/**
 * A box as one looks along its shafts from the clutch end: pitch circles at their centre distances, to scale as far as
 * modules are told. What carries power is drawn with its teeth, all else as a thin circle. A shaft that turns as the input
 * does is drawn turning clockwise.
 */
final class EndView {
    private static final double WIDEST = 900;
    private static final double HIGHEST = 620;
    private static final double MARGIN = 20;

    private final Layout layout;
    private final View view;
    private final Plan plan;
    private final Lines lines;
    private final Planets planets;
    private final Radii radii;
    private final List<Apart> apart;
    private final Axes axes;
    private final double unitsPerMm;

    EndView(Layout layout, View view, Plan plan) {
        this.layout = layout;
        this.view = view;
        this.plan = plan;
        this.lines = plan.lines();
        this.planets = plan.planets();
        this.radii = new Radii(layout, lines);
        Map<String, Double> reach = new LinkedHashMap<>();
        lines.free().forEach(line -> reach.put(line, reachMm(line)));
        this.apart = Apart.all(layout, lines, radii, planets).stream()
                .map(each -> each.clearOf(
                        1.05 * (reach.getOrDefault(each.one(), 0.0) + reach.getOrDefault(each.other(), 0.0))))
                .toList();
        this.axes = new Axes(lines.ofCarrier(layout.input()), apart, reach);
        Box extent = Box.of(reach.entrySet().stream()
                .map(each -> Box.about(
                        axes.of(each.getKey()).x(), axes.of(each.getKey()).y(), each.getValue(), each.getValue()))
                .toList());
        this.unitsPerMm = Math.min(WIDEST / extent.width(), HIGHEST / extent.height());
    }

    /** Of everything about this axis, planets and crowns of axles across included. */
    private double reachMm(String line) {
        double most = 12;
        for (Gear gear : gears(line)) {
            double carried = planets.isPlanet(gear.id()) ? radii.spindleMm(layout.shaft(gear.carrier())) : 0;
            most = Math.max(most, carried + radii.ofMm(gear.id()) + toothMm(gear));
        }
        return most;
    }

    /** About this axis, and about those that go with it. */
    private List<Gear> gears(String line) {
        return Stream.concat(Stream.of(line), lines.allBeside(line).stream())
                .flatMap(each -> lines.gears(each).stream())
                .toList();
    }

    /** From pitch circle to tip: the module, as the circle itself has it. */
    private double toothMm(Gear gear) {
        return 2 * radii.ofMm(gear.id()) / gear.teeth();
    }

    String write(boolean alone) {
        PowerPath path = view.motion().map(motion -> PowerPath.of(plan, motion)).orElse(new PowerPath(List.of()));
        Optional<Bodies> bodies = view.motion().map(motion -> new Bodies(layout, motion));
        InWords words = new InWords(layout, view);
        Svg picture = new Svg();
        Room room = new Room(lines.free().stream()
                .map(line -> Box.about(x(line), y(line), 12, 12))
                .toList());
        lines.free().forEach(line -> room.take(around(line)));
        Box wheels = room.extent();
        Room texts = new Room(List.of());
        new Wheels(this, bodies, path, words).write(picture, texts);
        // over the wheels, so that each is seen to end at two axes and its text to lie on it
        apart.forEach(each -> distance(picture, each));
        apart.forEach(each -> distanceNote(picture, each, texts));
        lines.free().forEach(line -> name(picture, line, room));
        Box canvas = room.extent().with(wheels).grown(MARGIN);
        canvas = notes(picture, canvas);
        if (view.motion().isPresent()) {
            canvas = Key.below(picture, canvas, InWords.driver(layout), false);
        }
        Svg svg = new Svg();
        SvgHead.open(svg, layout, view, canvas, "drawing from-end", alone);
        SvgHead.say(svg, view, words.title(), (words.description(path) + " " + said(bodies)).strip());
        LockedMark.pattern(svg, view.idPrefix());
        BlackAndWhite.pattern(svg, view.idPrefix());
        if (alone) {
            svg.rect(canvas, "fill", Ink.PAPER);
        }
        return svg.append(picture).close().toString();
    }

    Layout layout() {
        return layout;
    }

    View view() {
        return view;
    }

    Lines lines() {
        return lines;
    }

    Planets planets() {
        return planets;
    }

    /** Meshes that are made as everything stands now. */
    List<Mesh> made() {
        return plan.made();
    }

    double x(String line) {
        return axes.of(line).x() * unitsPerMm;
    }

    double y(String line) {
        return axes.of(line).y() * unitsPerMm;
    }

    /** The line with a place of its own that this goes with. */
    String placeOf(String line) {
        return lines.beside(line).map(this::placeOf).orElse(line);
    }

    double pitch(Gear gear) {
        return radii.ofMm(gear.id()) * unitsPerMm;
    }

    double tooth(Gear gear) {
        return toothMm(gear) * unitsPerMm;
    }

    double orbit(Shaft spindle) {
        return radii.spindleMm(spindle) * unitsPerMm;
    }

    private Box around(String line) {
        double reach = reachMm(line) * unitsPerMm;
        return Box.about(x(line), y(line), reach, reach);
    }

    private void distance(Svg svg, Apart each) {
        svg.path(
                Pen.at(x(each.one()), y(each.one())).line(x(each.other()), y(each.other())),
                "class",
                "distance",
                "fill",
                "none",
                "stroke",
                Ink.LINE,
                "stroke-width",
                1.2,
                "stroke-dasharray",
                each.told() ? null : "3 4");
    }

    private void distanceNote(Svg svg, Apart each, Room texts) {
        String says = each.told()
                ? Svg.number(Math.round(each.mm() * 10) / 10.0) + " mm"
                : each.chain() ? "chain, distance not told" : "distance not told";
        Label label = new Label(List.of(says), 13, "note distance-note");
        List<Box> wishes = Stream.of(0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74)
                .map(part -> label.box(
                        x(each.one()) + part * (x(each.other()) - x(each.one())),
                        y(each.one()) + part * (y(each.other()) - y(each.one())) - label.height() / 2))
                .toList();
        label.write(svg, texts.takeBest(wishes));
    }

    private void name(Svg svg, String line, Room room) {
        List<Part> parts = Stream.<Part>concat(lines.shafts(line).stream(), lines.differentials(line).stream())
                .toList();
        svg.path(
                Pen.at(x(line) - 7, y(line))
                        .across(x(line) + 7)
                        .move(x(line), y(line) - 7)
                        .upDown(y(line) + 7),
                "class",
                "axis",
                "fill",
                "none",
                "stroke",
                Ink.LINE,
                "stroke-width",
                1.6);
        String names = parts.stream()
                .map(part -> view.told().word().apply(part.name()))
                .collect(Collectors.joining(", "));
        Label label = Label.wrapped(names, 150, 13, "name");
        Box box = around(line);
        List<Box> wishes = new ArrayList<>();
        for (double away : new double[] {8, 26, 44, 62}) {
            wishes.add(label.box(box.x(), box.top() - label.height() - away));
            wishes.add(label.box(box.x(), box.bottom() + away));
            wishes.add(label.box(box.right() + label.width() / 2 + away, box.y() - label.height() / 2));
            wishes.add(label.box(box.left() - label.width() / 2 - away, box.y() - label.height() / 2));
        }
        Box place = room.takeBest(wishes);
        Point from = place.nearest(x(line), y(line));
        svg.path(
                Pen.at(from.x(), from.y()).line(x(line), y(line)),
                "class",
                "leader",
                "fill",
                "none",
                "stroke",
                Ink.FAINT,
                "stroke-width",
                0.8);
        label.write(svg, place);
    }

    /** What of the picture is not told by the layout, beneath it. */
    private Box notes(Svg svg, Box canvas) {
        double y = canvas.bottom() + 8;
        for (String note : notTold()) {
            Label label = Label.wrapped(note, Math.max(420, canvas.width() - 40), 13, "note");
            Box box = label.box(canvas.x(), y);
            label.write(svg, box);
            y = box.bottom() + 6;
            canvas = canvas.with(box.grown(8));
        }
        return canvas;
    }

    private List<String> notTold() {
        List<String> notes = new ArrayList<>();
        notes.add("Seen from the clutch end; what turns as the " + InWords.driver(layout)
                + " does is drawn turning clockwise.");
        if (layout.all(Gear.class).allMatch(gear -> gear.moduleMm().isEmpty())) {
            notes.add("No module is told, so sizes go by numbers of teeth alone and no distance is to scale.");
        } else if (apart.stream().anyMatch(each -> !each.told())) {
            notes.add("Dashed distances cannot be told: a module is missing, or a chain may be of any length.");
        }
        if (apart.stream().anyMatch(Apart::told)) {
            notes.add("Distances are those of module, helix and teeth, without profile shift.");
        }
        if (!axes.anyWay().isEmpty()) {
            notes.add("Which way these lie from their neighbour is not told: " + named(axes.anyWay()) + ".");
        }
        Set<String> across =
                axes.unjoined().stream().filter(this::isAcross).collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> unjoined = new LinkedHashSet<>(axes.unjoined());
        unjoined.removeAll(across);
        if (!across.isEmpty()) {
            notes.add("These lie across what one looks along, and are drawn beside it, turned into the plane: "
                    + named(across) + ".");
        }
        if (!unjoined.isEmpty()) {
            notes.add("Where these lie cannot be told, no gear joins them to the others side by side: "
                    + named(unjoined) + ".");
        }
        if (!axes.contradicted().isEmpty()) {
            notes.add("The distances of these to two others cannot both be so: " + named(axes.contradicted()) + ".");
        }
        return notes;
    }

    /** Whether a bevel pair turns the drive onto this line. */
    private boolean isAcross(String line) {
        return layout.everyMesh()
                .filter(mesh -> mesh.kind().isBevel())
                .anyMatch(mesh -> Stream.of(mesh.first(), mesh.second())
                        .anyMatch(gear -> lines.of(layout.gear(gear)).equals(line)));
    }

    private String named(Set<String> all) {
        return all.stream()
                .map(line -> lines.differentials(line).stream()
                        .<Part>map(differential -> differential)
                        .findFirst()
                        .orElseGet(() -> layout.parts().get(line))
                        .name())
                .map(view.told().word())
                .collect(Collectors.joining(", "));
    }

    /** The picture for those who do not see it. */
    private String said(Optional<Bodies> bodies) {
        List<String> says = new ArrayList<>();
        apart.forEach(each -> says.add("The axes of %s and %s lie %s."
                .formatted(
                        named(Set.of(each.one())),
                        named(Set.of(each.other())),
                        each.told()
                                ? Svg.number(Math.round(each.mm() * 10) / 10.0) + " mm apart"
                                : "at a distance that is not told")));
        bodies.ifPresent(all -> made().forEach(mesh -> {
            Gear one = layout.gear(mesh.first());
            Gear other = layout.gear(mesh.second());
            boolean both = Stream.of(one, other)
                    .allMatch(gear ->
                            all.speed(gear).filter(speed -> !speed.isZero()).isPresent());
            if (both
                    && view.motion()
                            .filter(motion -> motion.carrying().contains(one.id())
                                    && motion.carrying().contains(other.id()))
                            .isPresent()) {
                boolean alike = all.speed(one).orElseThrow().signum()
                        == all.speed(other).orElseThrow().signum();
                says.add("%s, %d teeth, meshes with %s, %d teeth; they turn %s."
                        .formatted(
                                view.told().word().apply(one.name()),
                                one.teeth(),
                                view.told().word().apply(other.name()),
                                other.teeth(),
                                alike ? "the same way" : "opposite ways"));
            }
        }));
        says.addAll(notTold());
        return String.join(" ", says);
    }

    /** Wheels to be painted, the largest first so that none hides another. */
    List<Gear> wheels() {
        return layout.all(Gear.class)
                .sorted(Comparator.comparingDouble(
                        (Gear gear) -> gear.form() == GearForm.INTERNAL ? -1e6 : -pitch(gear)))
                .toList();
    }
}
