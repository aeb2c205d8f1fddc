package org.layshaft.engine.whatif;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Detent;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/**
 * What a part has to do with engaging gears.
 *
 * @param member id of the sleeve or sliding gear it serves
 * @param side the one side it serves; empty for both
 */
record Served(String member, Optional<Side> side) {

    /** Everything that a part serves; nothing for a part that has no hand in engaging gears. */
    static List<Served> by(Layout layout, Part part) {
        if (part instanceof Fork fork) {
            return both(fork.member());
        }
        if (part instanceof Sleeve sleeve) {
            return both(sleeve.id());
        }
        if (part instanceof Hub hub) {
            return both(hub.sleeve());
        }
        if (part instanceof Rail rail) {
            return onRail(layout, rail);
        }
        if (part instanceof Detent detent) {
            return onRail(layout, layout.the(Rail.class, detent.rail()));
        }
        if (part instanceof BlockingRing ring) {
            return oneSide(layout.member(ring.sleeve()), ring.gear());
        }
        if (part instanceof ClutchingTeeth teeth) {
            return oneSide(layout.member(teeth.sleeve()), teeth.gear());
        }
        return layout.members().stream()
                .filter(member -> member.part().equals(part.id()))
                .map(member -> new Served(member.part(), Optional.empty()))
                .toList();
    }

    private static List<Served> both(String member) {
        return List.of(new Served(member, Optional.empty()));
    }

    private static List<Served> onRail(Layout layout, Rail rail) {
        return rail.forks().stream()
                .map(fork -> layout.the(Fork.class, fork).member())
                .flatMap(member -> both(member).stream())
                .toList();
    }

    private static List<Served> oneSide(ShiftMember member, String gear) {
        return Stream.of(Side.values())
                .filter(side -> member.at(side)
                        .filter(engagement -> engagement instanceof Engagement.Couples couples
                                && couples.to().equals(gear))
                        .isPresent())
                .map(side -> new Served(member.part(), Optional.of(side)))
                .toList();
    }
}
