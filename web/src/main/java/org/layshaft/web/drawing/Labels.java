package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Shaft;

/** The names that stand beside the parts, each where there is room nearest to its part. */
final class Labels {
    private static final double SIZE = 13.5;
    private static final double GAP = 4;
    private static final double STEP = 9;
    private static final int STEPS = 9;
    private static final double LED = 16;
    /** A shaft that ends this near to the outline of the case may be named outside of it. */
    private static final double NEAR_WALL = 60;

    /** Gears that come so near to each other are of one set. */
    private static final double SAME_SET = 2;

    /** A shaft in a crowd is named as far away as this, with a line that leads to it. */
    private static final double FARTHEST = 260;

    private static final double[] NEAR = {0, -12, 12};
    private static final double[] FAR = {0, -12, 12, -34, 34, -56, 56};

    private final Plan plan;
    private final Surroundings around;
    private final Figures figures;
    private final Marks marks;
    private final Room room;
    private final UnaryOperator<String> word;

    /**
     * @param word what a part of this name is called by those who read
     */
    Labels(Plan plan, Surroundings around, Figures figures, Marks marks, Room room, UnaryOperator<String> word) {
        this.plan = plan;
        this.around = around;
        this.figures = figures;
        this.marks = marks;
        this.room = room;
        this.word = word;
    }

    private String said(Part part) {
        return word.apply(part.name());
    }

    void write(Svg svg) {
        Layout layout = plan.layout();
        GearFigures gears = new GearFigures(plan);
        svg.open("g", "class", "labels", "aria-hidden", "true", "pointer-events", "none");
        layout.all(Rail.class).forEach(rail -> beside(svg, rail));
        layout.all(Fork.class)
                .filter(fork -> base(fork).length() <= 4 && !isNamedByItsRail(fork))
                .forEach(fork -> near(svg, marked(fork), plainly(base(fork)), -1));
        layout.all(Interlock.class)
                .filter(part -> part.rails().size() > 1)
                .forEach(part -> near(svg, marked(part), plainly(interlock(part)), -1));
        EndFigures ends = new EndFigures(plan, around);
        layout.all(HalfShaft.class).forEach(half -> near(svg, room.take(ends.wheel(half)), plainly(half.wheel()), 1));
        layout.all(DogRing.class).forEach(part -> near(svg, marked(part), wrapped(said(part)), 1));
        layout.all(Gear.class)
                .forEach(gear -> near(svg, wholeSet(gear), marked(gear), numbered(gear), gears.freeSide(gear)));
        layout.all(Shaft.class).filter(shaft -> shaft.carriedBy().isEmpty()).forEach(shaft -> atEnd(svg, shaft));
        layout.all(Differential.class).forEach(part -> near(svg, marked(part), plainly(said(part)), 1));
        layout.all(Clutch.class).forEach(part -> near(svg, marked(part), plainly(said(part)), 1));
        svg.close();
    }

    private Box marked(Part part) {
        return marks.around(part, figures.box(part.id()));
    }

    private static Label plainly(String text) {
        return new Label(List.of(text), SIZE, "name");
    }

    private static String base(Fork fork) {
        return fork.name().replaceFirst(" fork$", "");
    }

    private boolean isNamedByItsRail(Fork fork) {
        return plan.layout().the(Rail.class, fork.rail()).name().equals(base(fork) + " rail");
    }

    private static String interlock(Interlock interlock) {
        return interlock.form() == InterlockKind.NONE ? "no interlock" : interlock.name();
    }

    private static Label wrapped(String name) {
        // A long name gets longer lines rather than many.
        return Label.wrapped(name, name.length() > 18 ? 96 : 58, SIZE, "name");
    }

    /** Beside a gear, that it is a gear need not be said. */
    private String withoutGear(Gear gear) {
        String name = said(gear);
        String end = " gear";
        return name.endsWith(end) && !gear.id().endsWith("-gear")
                ? name.substring(0, name.length() - end.length())
                : name;
    }

    /** Of planets that are alike one is drawn, or one on either side; its name tells how many there are. */
    private Label numbered(Gear gear) {
        int count = plan.layout()
                .find(Shaft.class, gear.carrier())
                .map(Shaft::count)
                .orElse(1);
        String name = withoutGear(gear);
        return count > 1 ? Label.wrapped(name + ", one of " + count, 96, SIZE, "name") : wrapped(name);
    }

    /** The gears of an epicyclic set lie in one another, and are named outside of them all. */
    private Box wholeSet(Gear gear) {
        Box own = marked(gear);
        if (!plan.planets().isInSet(gear)) {
            return own;
        }
        return plan.layout()
                .all(Gear.class)
                .filter(plan.planets()::isInSet)
                .map(other -> figures.box(other.id()))
                .filter(other -> other.left() < own.right() && own.left() < other.right())
                .filter(other -> other.near(own, SAME_SET))
                .map(other -> new Box(own.left(), other.top(), own.right(), other.bottom()))
                .reduce(own, Box::with);
    }

    private void near(Svg svg, Box part, Label label, int side) {
        near(svg, part, part, label, side);
    }

    /** Outside of a part, or of all that is around it, with a line that leads to the part itself. */
    private void near(Svg svg, Box part, Box named, Label label, int side) {
        List<Box> wishes = new ArrayList<>();
        double beside = part.width() / 2 + label.width() / 2 + GAP;
        for (int step = 0; step < STEPS; step++) {
            if (step == 2) {
                for (double farther : new double[] {beside, beside + 22, beside + 44}) {
                    for (double top : new double[] {part.y() - label.height() - 10, part.y() + 10}) {
                        wishes.add(label.box(part.x() - farther, top));
                        wishes.add(label.box(part.x() + farther, top));
                    }
                }
            }
            for (double aside : step < 2 ? NEAR : FAR) {
                wishes.add(label.box(part.x() + aside, away(part, label, side, step)));
            }
            for (double aside : step < 2 ? NEAR : FAR) {
                wishes.add(label.box(part.x() + aside, away(part, label, -side, step + 0.4)));
            }
        }
        for (double farther : new double[] {beside, beside + 22, beside + 44, beside + 70}) {
            for (double down = 30; down < 120; down += 14) {
                for (double way : new double[] {-1, 1}) {
                    wishes.add(label.box(part.x() - farther, part.y() + way * down - label.height() / 2));
                    wishes.add(label.box(part.x() + farther, part.y() + way * down - label.height() / 2));
                }
            }
        }
        Box box = room.takeBest(wishes);
        leader(svg, named, box);
        label.write(svg, box);
    }

    private static double away(Box part, Label label, int side, double step) {
        double away = GAP + step * STEP;
        return side < 0 ? part.top() - away - label.height() : part.bottom() + away;
    }

    private static void leader(Svg svg, Box part, Box label) {
        Point from = label.nearest(part.x(), part.y());
        Point to = part.nearest(from.x(), from.y());
        if (Math.hypot(from.x() - to.x(), from.y() - to.y()) > LED) {
            svg.path(
                    Pen.at(from.x(), from.y()).line(to.x(), to.y()),
                    "class",
                    "leader",
                    "fill",
                    "none",
                    "stroke",
                    Ink.FAINT,
                    "stroke-width",
                    0.8);
        }
    }

    private void atEnd(Svg svg, Shaft shaft) {
        Label label = Label.wrapped(said(shaft), 90, SIZE, "name shaft-name");
        Box bar = figures.box(shaft.id());
        boolean front = plan.layout().input().equals(shaft.id());
        double half = label.width() / 2;
        List<Box> wishes = new ArrayList<>();
        for (boolean atFront : new boolean[] {front, !front}) {
            double end = atFront ? bar.left() + half : bar.right() - half;
            double outside = atFront
                    ? around.caseBox().left() - half - GAP
                    : around.caseBox().right() + half + GAP;
            double beyond = atFront ? bar.left() - half - 8 : bar.right() + half + 8;
            for (int step = 0; step < STEPS; step++) {
                double away = 4 + step * STEP;
                for (double aside :
                        new double[] {0, atFront ? 40 : -40, atFront ? -half : half, atFront ? -2 * half : 2 * half}) {
                    wishes.add(label.box(end + aside, bar.top() - away - label.height()));
                    wishes.add(label.box(end + aside, bar.bottom() + away));
                }
                if (Math.abs(outside - end) < label.width() + NEAR_WALL) {
                    wishes.add(label.box(outside, bar.top() - away - label.height()));
                }
            }
            wishes.add(label.box(beyond, bar.y() - label.height() / 2));
        }
        for (double away = 4 + STEPS * STEP; away < FARTHEST; away += STEP) {
            for (double aside = bar.left() - half; aside < bar.right() + 2 * half; aside += half) {
                wishes.add(label.box(aside, bar.top() - away - label.height()));
                wishes.add(label.box(aside, bar.bottom() + away));
            }
        }
        Box box = room.takeBest(wishes);
        leader(svg, bar, box);
        label.write(svg, box);
    }

    /** Before the rail's front end, or above or below that where a fork's stem is in the way. */
    private void beside(Svg svg, Rail rail) {
        Label label = plainly(said(rail));
        Box bar = figures.box(rail.id());
        double x = bar.left() - 8 - label.width() / 2;
        double y = around.railY(rail.id()) - label.height() / 2;
        List<Box> wishes = new ArrayList<>(List.of(label.box(x, y)));
        for (double aside = 0; aside < 120; aside += 12) {
            wishes.add(label.box(bar.left() + label.width() / 2 + aside, bar.top() - label.height() - 1));
            wishes.add(label.box(bar.left() + label.width() / 2 + aside, bar.bottom() + 1));
            wishes.add(label.box(x - aside, y));
        }
        label.write(svg, room.takeBest(wishes));
    }
}
