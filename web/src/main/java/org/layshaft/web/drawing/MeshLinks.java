package org.layshaft.web.drawing;

import java.util.List;
import org.layshaft.kb.layout.Mesh;

/** Dashed lines between gears that mesh and could not be drawn touching, as those of an idler off the plane. */
final class MeshLinks {
    private static final double BULGE = 26;

    private final Plan plan;
    private final Figures figures;

    MeshLinks(Plan plan, Figures figures) {
        this.plan = plan;
        this.figures = figures;
    }

    void write(Svg svg, Room room) {
        List<Mesh> apart = plan.made().stream().filter(mesh -> !plan.touch(mesh)).toList();
        for (Mesh mesh : apart) {
            Box one = plan.gearBox(mesh.first());
            Box other = plan.gearBox(mesh.second());
            Box upper = one.y() < other.y() ? one : other;
            Box lower = one.y() < other.y() ? other : one;
            boolean left = freer(upper, lower);
            double fromX = left ? upper.left() : upper.right();
            double toX = left ? lower.left() : lower.right();
            double out = left ? Math.min(fromX, toX) - BULGE : Math.max(fromX, toX) + BULGE;
            double fromY = upper.bottom() - Math.min(8, upper.height() / 4);
            double toY = lower.top() + Math.min(8, lower.height() / 4);
            svg.path(
                    Pen.at(fromX, fromY).curve(out, (fromY + toY) / 2, toX, toY),
                    "class",
                    "mesh-link",
                    "data-mesh",
                    mesh.id(),
                    "fill",
                    "none",
                    "stroke",
                    Ink.LINE,
                    "stroke-width",
                    1.6,
                    "stroke-dasharray",
                    "6 4");
            Label label = new Label(List.of("meshes", "with"), 12, "note");
            room.take(new Box(Math.min(out, fromX), fromY, Math.max(out, fromX), toY));
            double nearest = (fromX + toX) / 4 + out / 2;
            double x = left ? nearest - label.width() / 2 - 5 : nearest + label.width() / 2 + 5;
            label.write(svg, room.take(label.box(x, (fromY + toY - label.height()) / 2)));
        }
    }

    /** Whether there is more room on the left of the two. */
    private boolean freer(Box upper, Box lower) {
        double left = Math.min(upper.left(), lower.left());
        double right = Math.max(upper.right(), lower.right());
        double wide = 2 * BULGE;
        return covered(new Box(left - wide, upper.y(), left, lower.y()))
                <= covered(new Box(right, upper.y(), right + wide, lower.y()));
    }

    private double covered(Box box) {
        return figures.all().stream().mapToDouble(figure -> figure.box().shared(box)).sum();
    }
}
