package org.layshaft.web.cli;

import java.util.List;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.NoticedTogether;
import org.layshaft.web.desk.Differing;
import org.layshaft.web.desk.Wording;

/** Reasons as an indented tree: each conclusion, and beneath it what it rests on. */
final class ReasonText {
    private static final String STEP = "  ";

    private ReasonText() {}

    /** The reasons for every gear that is not simply sound, and for those the question is about. */
    static void all(TextPage page, Answer answer, Names names) {
        for (GearVerdict gear : answer.whatIf().gears()) {
            if (gear.verdict() != Verdict.WORKS || answer.gearsMeant().contains(gear.gear())) {
                gear(page, gear, names);
            }
        }
    }

    private static void gear(TextPage page, GearVerdict gear, Names names) {
        page.paragraph("Why %s: %s".formatted(gear.gear(), Wording.ofGear(gear.verdict())));
        List<Possibility> differing = Differing.among(gear.possibilities());
        differing.forEach(possibility -> possibility(page, gear.gear(), possibility, names));
        if (differing.isEmpty()) {
            tree(page, STEP, gear.because());
        }
    }

    private static void possibility(TextPage page, String gear, Possibility possibility, Names names) {
        page.item(STEP, "If ", possibility.says() + ": " + Wording.ofGear(possibility.verdict()));
        notices(page, STEP + STEP, gear, possibility.notices(), names);
        tree(page, STEP + STEP, possibility.because());
    }

    /** What is noticed in a gear, or in neutral, a line each. */
    static void notices(TextPage page, String indent, String gear, List<Notice> notices, Names names) {
        says(gear, notices, names).forEach(says -> page.item(indent, "* ", says));
    }

    /** What is noticed in a gear, situations in which it is the same together. */
    static List<String> says(String gear, List<Notice> notices, Names names) {
        return NoticedTogether.in(gear, notices).stream()
                .map(noticed -> noticed.saysWithoutGear(names))
                .toList();
    }

    private static void tree(TextPage page, String indent, List<Reason> reasons) {
        for (Reason reason : reasons) {
            page.item(indent, "- ", reason.says());
            tree(page, indent + STEP, reason.from());
        }
    }
}
