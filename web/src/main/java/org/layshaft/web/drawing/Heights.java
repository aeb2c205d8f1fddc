package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

/**
 * How high each line lies; down is positive and the input line lies at 0. A line goes where its gears truly touch those
 * of a line placed before, below rather than above. A line that lies off this plane, as an idler's spindle does, goes
 * where it hides nothing.
 */
final class Heights {
    private static final double COLLISION = 400;
    private static final double ABOVE = 40;
    private static final double OFF_ITS_MATE = 30;
    private static final double PER_UNIT_AWAY = 0.5;
    private static final double CLEARANCE = 5;

    private final Layout layout;
    private final Lines lines;
    private final Outlines outlines;
    private final Map<String, Double> heights = new LinkedHashMap<>();
    private final List<Box> placed = new ArrayList<>();

    Heights(Layout layout, Lines lines, Outlines outlines) {
        this.layout = layout;
        this.lines = lines;
        this.outlines = outlines;
        place(lines.ofCarrier(layout.input()), 0);
        while (heights.size() < lines.all().size()) {
            String next = next();
            place(next, best(next));
        }
    }

    private void place(String line, double height) {
        heights.put(line, height);
        lines.allBeside(line).forEach(beside -> heights.put(beside, height + outlines.offset(beside)));
        placed.addAll(moved(line, height));
    }

    double of(String line) {
        return heights.get(line);
    }

    /** From the highest tip of a gear to the lowest. */
    double extent() {
        return Box.of(placed).height();
    }

    /** Shafts that turn, then differentials, then spindles; of each kind one that meshes with what is placed, if any. */
    private String next() {
        return lines.free().stream()
                .filter(line -> !heights.containsKey(line))
                .min(Comparator.comparing((String line) -> joints(line).isEmpty())
                        .thenComparing(lines::held)
                        .thenComparing(lines::isAxle))
                .orElseThrow();
    }

    private double best(String line) {
        List<Mesh> joints = joints(line);
        return candidates(line, joints).stream()
                .min(Comparator.comparingDouble(height -> cost(line, height, joints)))
                .orElseThrow();
    }

    private List<Double> candidates(String line, List<Mesh> joints) {
        List<Double> heights = new ArrayList<>();
        for (Mesh mesh : joints) {
            double distance = outlines.centreDistance(mesh);
            heights.add(mateHeight(line, mesh) + distance);
            heights.add(mateHeight(line, mesh) - distance);
        }
        if (joints.isEmpty()
                || lines.held(line)
                || lines.isAxle(line)
                || heights.stream().allMatch(height -> collides(line, height))) {
            heights.addAll(clearHeights(line));
        }
        return heights;
    }

    /** The heights at which some figure of the line just clears some figure that is placed. */
    private List<Double> clearHeights(String line) {
        return outlines.of(line).stream()
                .flatMap(mine -> placed.stream()
                        .flatMap(other -> Stream.of(
                                other.bottom() + CLEARANCE - mine.top(), other.top() - CLEARANCE - mine.bottom())))
                .distinct()
                .filter(height -> !collides(line, height))
                .toList();
    }

    private double cost(String line, double height, List<Mesh> joints) {
        Box before = Box.of(placed);
        Box after = before.with(Box.of(moved(line, height)));
        double[] away = joints.stream()
                .mapToDouble(
                        mesh -> Math.abs(Math.abs(height - mateHeight(line, mesh)) - outlines.centreDistance(mesh)))
                .toArray();
        boolean touches = Arrays.stream(away).anyMatch(gap -> gap < 0.01);
        return after.height()
                - before.height()
                + PER_UNIT_AWAY * Arrays.stream(away).sum()
                + (touches ? 0 : OFF_ITS_MATE)
                + (height < 0 ? ABOVE : 0)
                + (collides(line, height) ? COLLISION : 0);
    }

    private boolean collides(String line, double height) {
        // Mates touch, and need no air between them.
        return moved(line, height).stream().anyMatch(mine -> placed.stream().anyMatch(other -> mine.near(other, -0.5)));
    }

    private List<Box> moved(String line, double height) {
        return outlines.of(line).stream().map(box -> box.moved(0, height)).toList();
    }

    /** The meshes of this line with lines that are placed. */
    private List<Mesh> joints(String line) {
        return layout.everyMesh()
                .filter(mesh -> lineOf(mesh.first()).equals(line)
                        != lineOf(mesh.second()).equals(line))
                .filter(mesh -> heights.containsKey(mateLine(line, mesh)))
                .toList();
    }

    private double mateHeight(String line, Mesh mesh) {
        return heights.get(mateLine(line, mesh));
    }

    private String mateLine(String line, Mesh mesh) {
        return lineOf(mesh.first()).equals(line) ? lineOf(mesh.second()) : lineOf(mesh.first());
    }

    private String lineOf(String gear) {
        return lines.of(layout.gear(gear));
    }
}
