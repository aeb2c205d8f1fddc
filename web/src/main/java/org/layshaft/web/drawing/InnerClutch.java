package org.layshaft.web.drawing;

import org.layshaft.kb.layout.Clutch;

/** A clutch inside the box: plates in turn from the drum that drives and from the hub that is driven. */
record InnerClutch(Plan plan) {
    static final double HALF = 22;
    static final double RADIUS = 62;
    private static final double HUB_TOP = 30;
    private static final double PLATE = 5;
    private static final double WEB = 5;

    /** Where its hub comes down to the shaft that it drives. */
    static Stands.Stand hub(String clutch, double x) {
        return new Stands.Stand(clutch, x + HALF - WEB, x + HALF);
    }

    /** Plates stand in turn; those of a closed clutch lie against each other. */
    Figure of(Clutch clutch) {
        double x = plan.x(clutch.id());
        double y = plan.carrierY(clutch.drives());
        double inner = plan.shaftRadius(clutch.drives(), x + HALF - WEB / 2);
        Box box = Box.about(x, y, HALF, RADIUS);
        boolean closed = plan.stance().of(clutch.id()).isPresent();
        double pitch = closed ? PLATE : PLATE + 2.2;
        Pen driving = new Pen();
        Pen driven = new Pen();
        for (int way : new int[] {-1, 1}) {
            for (int at = 0; at < 5; at++) {
                double left = x - 2.5 * pitch + at * pitch - 3;
                boolean fromDrum = at % 2 == 0;
                Pen pen = fromDrum ? driving : driven;
                double top = fromDrum ? RADIUS - 5 : RADIUS - 10;
                double foot = fromDrum ? HUB_TOP + 6 : HUB_TOP;
                pen.box(span(left, left + PLATE, y + way * foot, y + way * top));
            }
            driven.box(span(x - HALF + 4, x + HALF, y + way * (HUB_TOP - 5), y + way * HUB_TOP));
            driven.box(span(x + HALF - WEB, x + HALF, y + way * inner, y + way * (HUB_TOP - 5)));
        }
        Box upper = new Box(box.left(), box.top(), box.right(), y - inner);
        return new Figure(
                clutch, box, Ink.CLUTCH, java.util.List.of(upper, upper.moved(0, y + inner - upper.top())), svg -> {
                    svg.path(driven, "class", "body");
                    svg.path(driving, "class", "body driving");
                });
    }

    private static Box span(double left, double right, double one, double other) {
        return new Box(left, Math.min(one, other), right, Math.max(one, other));
    }
}
