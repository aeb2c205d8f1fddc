package org.layshaft.web.drawing;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Detent;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/** Rails with their notches, the detents that hold them, and the forks that hang from them. */
final class SelectorFigures {
    private static final double RAIL_HALF = 5;
    private static final double BOSS_HALF = 17;
    private static final double BOSS_HIGH = 9;
    private static final double STEM_HALF = 4;
    private static final double PRONG = 8;
    private static final double PRONG_WIDE = 6;
    private static final double BALL = 4;

    private final Plan plan;
    private final Surroundings around;

    SelectorFigures(Plan plan, Surroundings around) {
        this.plan = plan;
        this.around = around;
    }

    Figure fork(Fork fork) {
        double railY = around.railY(fork.rail());
        Pen pen = sleeve(fork).map(sleeve -> inGroove(sleeve, railY)).orElseGet(() -> astride(fork.member(), railY));
        Box boss = Box.about(stemX(fork), railY, BOSS_HALF, BOSS_HIGH);
        return new Figure(fork, boss, Ink.SELECTOR, svg -> {
            svg.path(pen, "class", "body");
            svg.rect(boss, "class", "body", "rx", 4.0);
        });
    }

    /** What the stems of the forks cover, from their rails down to what they move. */
    Stream<Box> stems() {
        return plan.layout().all(Fork.class).map(fork -> {
            double x = stemX(fork);
            double foot = sleeve(fork)
                    .map(sleeve -> plan.carrierY(sleeve.shaft()) - plan.sleeveRadius())
                    .orElseGet(() -> plan.gearBox(fork.member()).top());
            return new Box(x - STEM_HALF, around.railY(fork.rail()), x + STEM_HALF, foot);
        });
    }

    private Optional<Sleeve> sleeve(Fork fork) {
        return plan.layout().find(Sleeve.class, fork.member());
    }

    private double stemX(Fork fork) {
        return plan.x(fork.member())
                + sleeve(fork)
                        .map(SleeveFigures::grooveAside)
                        .orElseGet(() -> STEM_HALF - PRONG_WIDE - plan.half(fork.member()));
    }

    private Pen inGroove(Sleeve sleeve, double railY) {
        double x = plan.x(sleeve.id()) + SleeveFigures.grooveAside(sleeve);
        double pad = SleeveFigures.grooveHalf(sleeve) - 0.5;
        double rim = plan.carrierY(sleeve.shaft()) - plan.sleeveRadius();
        double stem = Math.min(STEM_HALF, pad);
        return Pen.at(x - stem, railY)
                .across(x + stem)
                .upDown(rim - 8)
                .line(x + pad, rim - 3)
                .upDown(rim + 5)
                .across(x - pad)
                .upDown(rim - 3)
                .line(x - stem, rim - 8)
                .close();
    }

    private Pen astride(String gear, double railY) {
        Box box = plan.gearBox(gear);
        double x = box.x();
        double outer = box.width() / 2 + PRONG_WIDE;
        double inner = box.width() / 2 + 1.5;
        double bridge = box.top() - 4;
        return Pen.at(x - outer, railY)
                .across(x - outer + 2 * STEM_HALF)
                .upDown(bridge - 6)
                .across(x + outer)
                .upDown(box.top() + PRONG)
                .across(x + inner)
                .upDown(bridge)
                .across(x - inner)
                .upDown(box.top() + PRONG)
                .across(x - outer)
                .close();
    }

    Figure rail(Rail rail) {
        double shift = plan.strokes().displacement(rail, plan.stance());
        double y = around.railY(rail.id());
        double first = plan.layout()
                .all(Fork.class)
                .filter(fork -> fork.rail().equals(rail.id()))
                .mapToDouble(fork -> plan.restX(fork.member()))
                .min()
                .orElse(around.gearing().x());
        Box bar = new Box(first - 44 + shift, y - RAIL_HALF, around.railEnd() + shift, y + RAIL_HALF);
        return new Figure(rail, bar, Ink.SELECTOR, svg -> {
            svg.rect(bar, "class", "body", "rx", 2.5);
            Pen notches = new Pen();
            notches(rail)
                    .forEach(notch -> notches.move(around.detentX() + shift + notch - 5, bar.top())
                            .line(around.detentX() + shift + notch, bar.top() + 6)
                            .line(around.detentX() + shift + notch + 5, bar.top())
                            .close());
            svg.path(notches, "class", "notch", "fill", Ink.PAPER);
        });
    }

    /** Where the notches lie, from the one that the detent holds in neutral. */
    private DoubleStream notches(Rail rail) {
        DoubleStream engaged = Arrays.stream(Side.values())
                .filter(side -> engages(rail, side))
                .mapToDouble(side -> -Strokes.signed(side, plan.strokes().of(rail, side)));
        return DoubleStream.concat(DoubleStream.of(0), engaged);
    }

    private boolean engages(Rail rail, Side side) {
        return plan.layout()
                .all(Fork.class)
                .filter(fork -> fork.rail().equals(rail.id()))
                .flatMap(fork -> plan.layout().members().stream()
                        .filter(member -> member.part().equals(fork.member())))
                .map((ShiftMember member) -> member.at(side))
                .flatMap(Optional<Engagement>::stream)
                .findAny()
                .isPresent();
    }

    Figure detent(Detent detent) {
        double x = around.detentX();
        double y = around.railY(detent.rail()) - RAIL_HALF - 1;
        Box box = new Box(x - 7, y - 20, x + 7, y + BALL);
        return new Figure(detent, box, Ink.SELECTOR_SMALL, svg -> {
            svg.rect(
                    Box.about(x, y - 8, 13, 14),
                    "class",
                    "target",
                    "fill",
                    "none",
                    "stroke",
                    "none",
                    "pointer-events",
                    "all");
            Pen spring = Pen.at(x - 6, y - 20).across(x + 6);
            for (int turn = 0; turn < 4; turn++) {
                spring.line(x + (turn % 2 == 0 ? -4 : 4), y - 17 + turn * 4);
            }
            svg.path(spring, "class", "spring", "fill", "none", "stroke-width", 1.2);
            svg.leaf("circle", "class", "body", "cx", x, "cy", y, "r", BALL);
        });
    }
}
