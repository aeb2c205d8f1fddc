package org.layshaft.web.page;

import java.util.List;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.NeutralVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Verdict;
import org.layshaft.web.asking.NoticedTogether;
import org.layshaft.web.desk.Wording;

/**
 * A row of the table: what becomes of one gear, or of neutral.
 *
 * @param href to the same with this gear drawn
 * @param meant whether the question is about this gear
 * @param ratio null for neutral
 * @param notices what is noticed whichever way things are
 * @param possibilities the ways things may be; empty where it does not matter which holds
 */
record VerdictView(
        String gear,
        String href,
        boolean meant,
        MarkView mark,
        String verdict,
        String direction,
        NumberView ratio,
        List<String> notices,
        List<ReasonView> because,
        List<PossibilityView> possibilities) {

    static List<VerdictView> all(Scene scene) {
        return scene.answer().whatIf().gears().stream()
                .map(gear -> of(gear, scene))
                .toList();
    }

    private static VerdictView of(GearVerdict gear, Scene scene) {
        return new VerdictView(
                gear.gear(),
                scene.address().inGear(gear.gear()).link() + "#sheet",
                scene.answer().gearsMeant().contains(gear.gear()),
                MarkView.of(gear.verdict()),
                Wording.ofGear(gear.verdict()),
                gear.direction().word(),
                NumberView.of(gear.ratio()),
                says(gear.gear(), gear.notices(), scene),
                ReasonView.all(gear.because()),
                PossibilityView.all(
                        gear.possibilities(), Wording::ofGear, notices -> says(gear.gear(), notices, scene)));
    }

    static VerdictView ofNeutral(Scene scene) {
        NeutralVerdict neutral = scene.answer().whatIf().neutral();
        return new VerdictView(
                "neutral",
                scene.address().inGear(Address.NEUTRAL).link() + "#sheet",
                false,
                MarkView.of(neutral.verdict()),
                Wording.ofNeutral(neutral),
                "",
                null,
                says(NoticedTogether.NEUTRAL, neutral.notices(), scene),
                ReasonView.all(neutral.because()),
                PossibilityView.all(
                        neutral.possibilities(),
                        (Verdict verdict) -> Wording.ofNeutral(verdict),
                        notices -> says(NoticedTogether.NEUTRAL, notices, scene)));
    }

    private static List<String> says(String gear, List<Notice> notices, Scene scene) {
        return NoticedTogether.in(gear, notices).stream()
                .map(noticed -> noticed.saysWithoutGear(scene.names()))
                .toList();
    }

    public boolean hasNotices() {
        return !notices.isEmpty();
    }

    public boolean hasPossibilities() {
        return !possibilities.isEmpty();
    }

    public boolean hasBecause() {
        return !because.isEmpty();
    }

    public boolean isReverse() {
        return direction.equals("reverse");
    }
}
