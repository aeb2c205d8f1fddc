package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

/** By what sleeves, sliding gears and inner clutches are moved: an arrow to each place next to the one where they stand. */
record Handles(Plan plan, Figures figures, View view, Room room) {
    /** Wide enough to be hit with a finger where the drawing is as wide as it is made for. */
    private static final double SIZE = 26;

    private static final double GAP = 4;

    void write(Svg svg) {
        if (plan.layout().members().stream().noneMatch(this::canMove)) {
            return;
        }
        svg.open("g", "class", "handles");
        plan.layout().members().stream().filter(this::canMove).forEach(member -> write(svg, member));
        svg.close();
    }

    /** Where a member can go next, the front first. */
    static List<Move> moves(Layout layout, Stance stance, String member) {
        List<Move> moves = new ArrayList<>();
        Optional<Side> stands = stance.of(member);
        for (Side way : Side.values()) {
            if (stands.isEmpty() && layout.member(member).at(way).isPresent()) {
                moves.add(new Move(member, way, Optional.of(way)));
            } else if (stands.filter(way.opposite()::equals).isPresent()) {
                moves.add(new Move(member, way, Optional.empty()));
            }
        }
        return moves;
    }

    private boolean canMove(ShiftMember member) {
        return moves(plan.layout(), plan.stance(), member.part()).stream()
                .anyMatch(move -> view.moveOf().apply(move).isPresent());
    }

    private void write(Svg svg, ShiftMember member) {
        List<Move> moves = moves(plan.layout(), plan.stance(), member.part());
        Box place = place(figures.box(member.part()));
        for (Move move : moves) {
            Optional<String> address = view.moveOf().apply(move);
            double x = moves.size() == 1
                    ? place.x()
                    : move.way() == Side.FRONT ? place.left() + SIZE / 2 : place.right() - SIZE / 2;
            address.ifPresent(href -> arrow(svg, move, href, x, place.y()));
        }
    }

    /** Beneath or above what is moved, where it hides least. */
    private Box place(Box box) {
        double half = SIZE + GAP / 2;
        List<Box> wishes = new ArrayList<>();
        for (double away : new double[] {0, 10, 22, 36}) {
            wishes.add(Box.about(box.x(), box.bottom() + GAP + away + SIZE / 2, half, SIZE / 2));
            wishes.add(Box.about(box.x(), box.top() - GAP - away - SIZE / 2, half, SIZE / 2));
        }
        return room.takeBest(wishes);
    }

    private void arrow(Svg svg, Move move, String href, double x, double y) {
        String name = view.told()
                .word()
                .apply(plan.layout().parts().get(move.member()).name());
        String to = move.to().map(side -> "to the " + side.word()).orElse("to neutral");
        svg.open(
                "a",
                "href",
                href,
                "class",
                "move",
                "data-member",
                move.member(),
                "data-with",
                plan.layout()
                        .forkOf(move.member())
                        .map(fork -> fork.id() + " " + fork.rail())
                        .orElse(null),
                "data-way",
                move.way().word(),
                "aria-label",
                "Move the %s %s".formatted(name, to));
        Box box = Box.about(x, y, SIZE / 2, SIZE / 2);
        svg.rect(box, "class", "move-plate", "rx", 5.0, "fill", Ink.PAPER, "stroke", Ink.MEANT, "stroke-width", 1.6);
        Pen head = new Pen();
        Heads.solid(head, x, y, move.way() == Side.FRONT ? -1 : 1, 0, 13);
        svg.path(head, "class", "move-head", "fill", Ink.MEANT, "stroke", "none");
        svg.close();
    }
}
