package org.layshaft.web.drawing;

import org.layshaft.kb.layout.Mesh;

/** A chain or toothed belt: two strands from sprocket to sprocket, with its links across them. */
record Chain(Plan plan, Mesh mesh) {
    private static final double STRAND = 7;
    private static final double LINK = 8;

    void write(Svg svg, Room room) {
        boolean firstIsUpper = plan.gearY(mesh.first()) < plan.gearY(mesh.second());
        Box upper = plan.gearBox(firstIsUpper ? mesh.first() : mesh.second());
        Box lower = plan.gearBox(firstIsUpper ? mesh.second() : mesh.first());
        Pen strands = new Pen();
        Pen links = new Pen();
        double steps = Math.max(1, Math.floor((lower.top() - upper.bottom()) / LINK));
        for (int way : new int[] {-1, 1}) {
            strands.move(upper.x() + way * STRAND, upper.bottom()).line(lower.x() + way * STRAND, lower.top());
            for (int at = 0; at <= steps; at++) {
                double share = at / steps;
                double x = upper.x() + (lower.x() - upper.x()) * share + way * STRAND;
                double y = upper.bottom() + (lower.top() - upper.bottom()) * share;
                links.move(x - 3, y).across(x + 3);
            }
        }
        svg.open("g", "class", "chain", "data-mesh", mesh.id(), "fill", "none", "stroke", Ink.LINE);
        svg.path(strands, "class", "strand", "stroke-width", 2.2);
        svg.path(links, "class", "links", "stroke-width", 1.4);
        svg.close();
        room.take(new Box(
                Math.min(upper.x(), lower.x()) - STRAND - 4,
                upper.bottom(),
                Math.max(upper.x(), lower.x()) + STRAND + 4,
                lower.top()));
    }
}
