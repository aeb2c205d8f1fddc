package org.layshaft.web.page;

import java.util.List;
import org.layshaft.engine.api.Conflict;
import org.layshaft.web.desk.PairGroup;
import org.layshaft.web.desk.Wording;

/**
 * Pairs of gears on different rails that fare alike.
 *
 * @param pairs {@code 1 and 3, 1 and 4}
 * @param meant whether the question is about one of them
 * @param outcome what happens, or would happen, with both engaged
 * @param keptBy the pieces that keep them apart; empty where nothing does
 * @param why the reasons, pair by pair
 */
record PairView(String pairs, boolean meant, String outcome, List<LinkView> keptBy, List<WhyView> why) {

    /** Why one pair is as it is. */
    record WhyView(String gears, List<ReasonView> because) {}

    /** Those pairs that can meet, or those that cannot. */
    static List<PairView> all(Scene scene, boolean canMeet) {
        return PairGroup.of(scene.answer().whatIf().conflicts(), canMeet).stream()
                .map(group -> of(group, scene))
                .toList();
    }

    private static PairView of(PairGroup group, Scene scene) {
        return new PairView(
                group.pairs(),
                group.conflicts().stream().anyMatch(scene.answer().conflicts()::contains) && scene.answered(),
                Wording.ofBoth(group.outcome()),
                group.preventedBy().stream().map(scene::linkTo).toList(),
                group.conflicts().stream().map(PairView::why).toList());
    }

    private static WhyView why(Conflict conflict) {
        return new WhyView(String.join(" and ", conflict.gears()), ReasonView.all(conflict.because()));
    }

    public boolean hasKeptBy() {
        return !keptBy.isEmpty();
    }
}
