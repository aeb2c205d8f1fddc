package org.layshaft.web.drawing;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;

/** Where things stand that tie shaft ends to each other: differentials, clutches inside, axles across. */
record Ends(Layout layout, Sizes sizes, Spacing spacing) {

    void keep(Lines lines) {
        layout.all(Clutch.class)
                .filter(clutch -> clutch.drivenBy().isPresent())
                .forEach(clutch -> behind(clutch.id(), items(clutch.drives()), 0));
        layout.all(Joint.class).forEach(joint -> {
            before(joint.id(), items(joint.from()), Sizes.GAP);
            behind(joint.id(), items(joint.to()), Sizes.GAP);
        });
        layout.all(Differential.class).forEach(this::keep);
        lines.axlesAcross().forEach(axle -> keep(axle, lines));
        couplings()
                .filter(to -> layout.find(Gear.class, to.getValue()).isEmpty())
                .forEach(this::close);
    }

    /** Sleeves come as near to what they couple as they have to, to reach it, where nothing is against it. */
    void closeUp() {
        couplings().forEach(this::close);
    }

    /** What is coupled, by the sleeve or sliding gear that couples it. */
    private Stream<Map.Entry<String, String>> couplings() {
        return layout.members().stream()
                .flatMap(member -> member.sides().values().stream()
                        .filter(Engagement.Couples.class::isInstance)
                        .map(engagement -> Map.entry(member.part(), ((Engagement.Couples) engagement).to())));
    }

    /** The case behind what its shaft has, the first side in front of it, the second behind. */
    private void keep(Differential differential) {
        String id = differential.id();
        differential.shaft().ifPresent(shaft -> before(id, items(shaft), 0));
        List<String> sides = differential.sides();
        if (layout.find(HalfShaft.class, sides.get(0)).isPresent()) {
            return;
        }
        boolean turned = isLockedFrom(differential, sides.get(0), Side.FRONT)
                || isLockedFrom(differential, sides.get(1), Side.REAR);
        before(id, items(sides.get(turned ? 1 : 0)), Sizes.GAP);
        behind(id, items(sides.get(turned ? 0 : 1)), Sizes.GAP);
    }

    /** Whether a sleeve on this shaft goes to that side to lock the differential. */
    private boolean isLockedFrom(Differential differential, String shaft, Side side) {
        return layout.shaft(shaft).along().stream().anyMatch(item -> couples(item, side, differential.id()));
    }

    private boolean couples(String item, Side side, String to) {
        return layout.members().stream()
                .filter(member -> member.part().equals(item))
                .flatMap(member -> member.at(side).stream())
                .anyMatch(engagement -> engagement instanceof Engagement.Couples couples
                        && couples.to().equals(to));
    }

    private void keep(Axle axle, Lines lines) {
        String id = axle.differential();
        spacing.exactly(axle.pinion(), id, axle.behindPinion());
        double past = EndFigures.WHEEL_RADIUS - Axle.CASE_HALF;
        layout.all(Shaft.class)
                .filter(shaft -> !lines.ofCarrier(shaft.id()).equals(lines.of(layout.gear(axle.pinion()))))
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

    private void close(Map.Entry<String, String> coupling) {
        String member = coupling.getKey();
        String to = coupling.getValue();
        double distance = sizes.half(to) + Sizes.COUPLING_GAP + sizes.half(member);
        boolean front = couples(member, Side.FRONT, to);
        spacing.exactly(front ? to : member, front ? member : to, distance);
    }

    private List<String> items(String shaft) {
        List<String> noses =
                Lines.between(layout).stream().map(bearing -> bearing.id()).toList();
        return layout.shaft(shaft).along().stream()
                .filter(id -> !noses.contains(id))
                .toList();
    }
}
