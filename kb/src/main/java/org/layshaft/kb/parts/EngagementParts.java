package org.layshaft.kb.parts;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.typed.EffectiveSides;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMember;
import org.layshaft.kb.typed.TypedMesh;
import org.layshaft.kb.typed.TypedSide;
import org.layshaft.kb.typed.TypedSleeve;

/** What a sleeve or sliding gear engages, with the clutching teeth and blocking rings that takes. */
final class EngagementParts {
    private EngagementParts() {}

    static ShiftMember add(TypedMember member, TypedLayout layout, PartLedger ledger) {
        Map<Side, Engagement> sides = new EnumMap<>(Side.class);
        EffectiveSides.of(member, layout).forEach((side, typed) -> {
            if (typed instanceof TypedSide.Couples couples) {
                sides.put(side, couple(member, side, couples.to().id(), ledger));
            } else if (typed instanceof TypedSide.Meshes meshes) {
                sides.put(
                        side,
                        new Engagement.Meshes(layout.meshes(member, meshes).stream()
                                .map(TypedMesh::mesh)
                                .toList()));
            } else if (typed instanceof TypedSide.Closes closes) {
                sides.put(side, new Engagement.Closes(closes.shaft().id()));
            }
        });
        return new ShiftMember(member.id(), sides);
    }

    private static Engagement couple(TypedMember member, Side side, String gear, PartLedger ledger) {
        String words = DefaultNames.words(gear);
        String teeth = unused(gear + "-clutching-teeth", ledger);
        ledger.add(
                new ClutchingTeeth(ledger.named(teeth, words + " clutching teeth"), member.id(), gear),
                member.pointer());
        if (!(member instanceof TypedSleeve sleeve) || !sleeve.rings().contains(side)) {
            return new Engagement.Couples(gear, teeth, Optional.empty());
        }
        String ring = unused(gear + "-ring", ledger);
        ledger.add(new BlockingRing(ledger.named(ring, words + " blocking ring"), member.id(), gear), member.pointer());
        return new Engagement.Couples(gear, teeth, Optional.of(ring));
    }

    /** A gear between two sleeves has clutching teeth on both its faces; all but the first take a number. */
    private static String unused(String id, PartLedger ledger) {
        String unused = id;
        for (int number = 2; ledger.has(unused); number++) {
            unused = id + "-" + number;
        }
        return unused;
    }
}
