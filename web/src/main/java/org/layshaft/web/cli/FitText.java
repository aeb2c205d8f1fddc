package org.layshaft.web.cli;

import java.util.List;
import org.layshaft.engine.fit.Companions;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.engine.fit.Serving;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.CheckWording;
import org.layshaft.web.desk.ExchangeWording;
import org.layshaft.web.desk.FitAnswer;
import org.layshaft.web.desk.FitAnswer.Supplied;
import org.layshaft.web.desk.FitSaid;
import org.layshaft.web.desk.FitWording;
import org.layshaft.web.desk.SupplyWording;

/** What the parts counter says, as plain text. */
final class FitText {
    private static final int MOST_CURES = 3;

    private final TextPage page = new TextPage();
    private final FitAnswer answer;

    private FitText(FitAnswer answer) {
        this.answer = answer;
    }

    static String of(FitAnswer answer, Catalogue catalogue) {
        return new FitText(answer).write(catalogue);
    }

    private String write(Catalogue catalogue) {
        page.paragraph(FitSaid.asked(answer) + ".");
        page.paragraph(FitSaid.lead(answer));
        answer.inFull().forEach(this::whole);
        rest(answer.inBrief());
        for (Supplied supplied : answer.supplies()) {
            page.list(
                    "What is supplied for %s%s:"
                            .formatted(
                                    supplied.supply().asked(),
                                    supplied.box()
                                            .map(box -> ", " + FitWording.of(box))
                                            .orElse("")),
                    SupplyWording.says(supplied.supply(), catalogue));
        }
        return page.list("Before anything is ordered or fitted:", Cautions.ofParts())
                .toString();
    }

    private void whole(Serving serving) {
        Fitted fitted = serving.box().fitted();
        page.paragraph("%s, %s: %s"
                .formatted(
                        FitWording.of(serving.box()),
                        FitWording.places(serving.placement(), fitted),
                        FitWording.verdict(serving)));
        FitWording.besides(serving).forEach(each -> page.item("", "", each));
        serving.companions().forEach(companions -> companions(companions, fitted));
        ExchangeWording.setAgain(serving).forEach(each -> page.item("  ", "then: ", each));
        FitWording.notes(serving).forEach(note -> page.item("  ", "note: ", note));
        for (Outcome outcome : List.of(Outcome.FAILS, Outcome.UNTOLD, Outcome.HOLDS)) {
            serving.judgements().stream()
                    .filter(judgement -> judgement.outcome() == outcome)
                    .forEach(judgement -> check(judgement, fitted));
        }
    }

    private void companions(Companions companions, Fitted fitted) {
        page.item("  ", "with: ", FitWording.of(companions) + (companions.told() ? "" : ", not everything being told"));
        FitWording.placed(companions, fitted).forEach(placed -> page.item("      ", "- ", placed));
        companions.cures().stream()
                .limit(MOST_CURES)
                .forEach(cure -> page.item("      ", "- cures ", CheckWording.says(cure)));
    }

    private void check(Judgement judgement, Fitted fitted) {
        page.item(
                "  ",
                CheckWording.of(judgement.outcome()) + ": ",
                "%s. %s".formatted(CheckWording.where(judgement.meeting(), fitted), CheckWording.says(judgement)));
    }

    private void rest(List<Serving> servings) {
        if (servings.isEmpty()) {
            return;
        }
        TextTable table = new TextTable("verdict", "set", "box", "places");
        servings.stream()
                .filter(serving -> serving.verdict() != FitVerdict.DOES_NOT_FIT)
                .forEach(serving -> table.row(row(serving)));
        servings.stream()
                .filter(serving -> serving.verdict() == FitVerdict.DOES_NOT_FIT)
                .forEach(serving -> table.row(row(serving)));
        page.block(table.toString()).paragraph(FitSaid.OF_BRIEF);
    }

    private static List<String> row(Serving serving) {
        return List.of(
                serving.verdict().spoken(),
                serving.placement().set().number(),
                serving.box().build().id(),
                FitWording.places(serving.placement(), serving.box().fitted()));
    }
}
