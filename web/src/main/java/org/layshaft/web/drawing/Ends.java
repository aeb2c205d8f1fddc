package org.layshaft.web.drawing;

import java.util.List;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** Where things stand that tie shaft ends to each other: differentials, clutches inside, axles across. */
record Ends(Layout layout, Sizes sizes, Spacing spacing) {

    void keep(Lines lines) {
        layout.all(Clutch.class)
                .filter(clutch -> clutch.drivenBy().isPresent())
                .forEach(clutch -> behind(clutch.id(), items(clutch.drives()), 0));
        layout.all(Differential.class).forEach(this::keep);
        lines.axlesAcross().forEach(axle -> keep(axle, lines));
        layout.members().forEach(member -> member.sides().values().stream()
                .filter(Engagement.Couples.class::isInstance)
                .map(engagement -> ((Engagement.Couples) engagement).to())
                .filter(to -> layout.find(Gear.class, to).isEmpty())
                .forEach(to -> close(to, member.part())));
    }

    /** The case behind what its shaft has, the first side in front of it, the second behind. */
    private void keep(Differential differential) {
        String id = differential.id();
        differential.shaft().ifPresent(shaft -> before(id, items(shaft), 0));
        List<String> sides = differential.sides();
        if (layout.find(HalfShaft.class, sides.get(0)).isPresent()) {
            return;
        }
        before(id, items(sides.get(0)), Sizes.GAP);
        behind(id, items(sides.get(1)), Sizes.GAP);
    }

    private void keep(Axle axle, Lines lines) {
        String id = axle.differential();
        spacing.exactly(axle.pinion(), id, axle.behindPinion());
        double past = EndFigures.WHEEL_RADIUS - Axle.CASE_HALF;
        layout.all(Shaft.class)
                .filter(shaft -> lines.ofCarrier(shaft.id()).equals(lines.of(layout.gear(axle.pinion()))) == false)
                .forEach(shaft -> {
                    if (axle.atRear()) {
                        before(id, items(shaft.id()), past);
                    } else {
                        behind(id, items(shaft.id()), past);
                    }
                });
    }

    private void before(String id, List<String> items, double more) {
        items.forEach(item -> spacing.atLeast(item, id, apart(item, id) + more));
    }

    private void behind(String id, List<String> items, double more) {
        items.forEach(item -> spacing.atLeast(id, item, apart(item, id) + more));
    }

    private double apart(String one, String other) {
        return sizes.half(one) + Sizes.GAP + sizes.half(other);
    }

    /** Nothing else holds a dog ring in its place, so it stands as near to its sleeve as it can. */
    private void close(String to, String member) {
        double distance = sizes.half(to) + Sizes.COUPLING_GAP + sizes.half(member);
        boolean front = layout.member(member).sides().entrySet().stream()
                .anyMatch(side -> side.getKey() == org.layshaft.kb.layout.Side.FRONT
                        && side.getValue() instanceof Engagement.Couples couples
                        && couples.to().equals(to));
        spacing.exactly(front ? to : member, front ? member : to, distance);
    }

    private List<String> items(String shaft) {
        List<String> noses = Lines.between(layout).stream().map(bearing -> bearing.id()).toList();
        return layout.shaft(shaft).along().stream().filter(id -> !noses.contains(id)).toList();
    }
}
