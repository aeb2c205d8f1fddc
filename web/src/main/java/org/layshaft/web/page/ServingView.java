package org.layshaft.web.page;

import java.util.List;
import org.layshaft.engine.fit.Companions;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Serving;
import org.layshaft.web.desk.CheckWording;
import org.layshaft.web.desk.ExchangeWording;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.FitWording;

/**
 * Whether a set serves at one place of one box.
 *
 * @param verdict as the style of the mark
 * @param spoken the verdict in words
 * @param checks with every figure; empty in a row of a table
 * @param setAgain what must be measured and set again
 */
record ServingView(
        String set,
        String setHref,
        String box,
        String places,
        String href,
        MarkView mark,
        String verdict,
        String spoken,
        String says,
        List<String> besides,
        List<CompanionsView> companions,
        List<FitCheckView> checks,
        List<String> setAgain,
        List<String> notes) {

    /** One smallest set of further parts. */
    record CompanionsView(String units, List<String> placed, List<String> cures, boolean told) {
        static CompanionsView of(Companions companions, Fitted fitted) {
            return new CompanionsView(
                    FitWording.of(companions),
                    FitWording.placed(companions, fitted),
                    companions.cures().stream().map(CheckWording::says).toList(),
                    companions.told());
        }
    }

    /** With all that every check says. */
    static ServingView whole(Serving serving) {
        return of(serving, FitCheckView.all(serving.judgements(), serving.box().fitted()));
    }

    /** For a row of a table. */
    static ServingView brief(Serving serving) {
        return of(serving, List.of());
    }

    private static ServingView of(Serving serving, List<FitCheckView> checks) {
        Fitted fitted = serving.box().fitted();
        String number = serving.placement().set().number();
        String first = serving.placement().parts().keySet().iterator().next();
        FitRequest here = FitRequest.of(number).in(serving.box().build().id()).at(first);
        return new ServingView(
                FitWording.of(serving.placement().set()),
                FitAddress.link(FitRequest.of(number)),
                FitWording.of(serving.box()),
                FitWording.places(serving.placement(), fitted),
                FitAddress.link(here),
                MarkView.of(serving.verdict()),
                MarkView.verdict(serving.verdict()),
                serving.verdict().spoken(),
                FitWording.verdict(serving),
                FitWording.besides(serving),
                serving.companions().stream()
                        .map(companions -> CompanionsView.of(companions, fitted))
                        .toList(),
                checks,
                ExchangeWording.setAgain(serving),
                FitWording.notes(serving));
    }

    public boolean hasCompanions() {
        return !companions.isEmpty();
    }

    public boolean hasSetAgain() {
        return !setAgain.isEmpty();
    }

    public boolean hasNotes() {
        return !notes.isEmpty();
    }

    public boolean hasChecks() {
        return !checks.isEmpty();
    }
}
