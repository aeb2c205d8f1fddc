package org.layshaft.web.cli;

import java.util.List;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.NoticedTogether;
import org.layshaft.web.asking.Question;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.PairGroup;
import org.layshaft.web.desk.Turning;
import org.layshaft.web.desk.Wording;

/** An answer in plain text: what was understood, the answer in sentences, a table of the gears, reasons, cautions. */
final class AnswerText {
    private final TextPage page = new TextPage();
    private final Answer answer;
    private final Layout layout;
    private final Names names;

    private AnswerText(Answer answer, Layout layout, Names names) {
        this.answer = answer;
        this.layout = layout;
        this.names = names;
    }

    /**
     * @param others other readings of the question
     */
    static String of(Answer answer, List<String> others, Layout layout, Names names) {
        return new AnswerText(answer, layout, names).write(others);
    }

    private String write(List<String> others) {
        WhatIf whatIf = answer.whatIf();
        page.paragraph("Understood as: " + answer.understood());
        page.list("It could also mean:", others);
        answer.says().forEach(page::paragraph);
        if (answer.question() instanceof Question.OfParts) {
            return page.list("Before anything is ordered or fitted:", Cautions.of(answer))
                    .toString();
        }
        if (answer.question() instanceof Question.AtLarge) {
            return page.list("Before anybody works on it:", Cautions.of(answer)).toString();
        }
        page.block(gears(whatIf));
        page.paragraph("Neutral: " + Wording.ofNeutral(whatIf.neutral()) + ".");
        ReasonText.notices(page, "  ", NoticedTogether.NEUTRAL, whatIf.neutral().notices(), names);
        page.list("Two gears that can be engaged at once:", pairs(whatIf.conflicts(), true));
        page.list("Kept apart:", pairs(whatIf.conflicts(), false));
        answer.motion().ifPresent(motion -> page.block(turning(motion)));
        ReasonText.all(page, answer, names);
        page.list("Before anybody works on it:", Cautions.of(answer));
        return page.toString();
    }

    private String gears(WhatIf whatIf) {
        TextTable table = new TextTable("gear", "direction", "ratio", "", "verdict", "what you notice");
        for (GearVerdict gear : whatIf.gears()) {
            table.row(
                    List.of(
                            gear.gear(),
                            gear.direction().word(),
                            gear.ratio().toString(),
                            Decimals.three(gear.ratio()),
                            Wording.ofGear(gear.verdict())),
                    ReasonText.says(gear.gear(), gear.notices(), names));
        }
        return table.toString();
    }

    private List<String> pairs(List<Conflict> conflicts, boolean canMeet) {
        return PairGroup.of(conflicts, canMeet).stream().map(this::pairs).toList();
    }

    private String pairs(PairGroup group) {
        String outcome = Wording.ofBoth(group.outcome());
        return group.preventedBy().isEmpty()
                ? "%s: %s".formatted(group.pairs(), outcome)
                : "%s, by %s; without it %s".formatted(group.pairs(), names.list(group.preventedBy()), outcome);
    }

    private String turning(Motion motion) {
        TextTable table = new TextTable("part", "turns for one of the input", "", "which way");
        for (Turning turning : Turning.of(layout, names, motion)) {
            table.row(List.of(
                    turning.name(),
                    turning.speed().map(Object::toString).orElse("not fixed"),
                    turning.speed().map(Decimals::three).orElse(""),
                    Wording.of(turning.sense())));
        }
        return table.toString();
    }
}
