package org.layshaft.web.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.FitAnswer;
import org.layshaft.web.desk.FitDesk;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.FitSaid;
import org.layshaft.web.desk.FitWording;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.desk.Units;

/** The page of the parts counter: does this set serve in that box, and what fits here. Thread-safe. */
public final class FitPage {
    private final PartsDesk parts;
    private final FitDesk desk;
    private final Templates templates;

    FitPage(Desk desk, Templates templates) {
        this.parts = desk.parts();
        this.desk = new FitDesk(desk.parts());
        this.templates = templates;
    }

    /** The page; what cannot be used is said on it, above the form to put it right in. */
    public Answered answer(FitRequest request, Units units) {
        if (request.set().isEmpty() && request.box().isEmpty()) {
            return Answered.with(fill(choosing(request, parts.holding("")), request, units));
        }
        try {
            return Answered.with(fill(answered(request, desk.fit(request)), request, units));
        } catch (BadInputException problem) {
            List<PartSet> holding = request.set().map(parts::holding).orElse(List.of());
            boolean searching = request.box().isEmpty() && request.place().isEmpty() && !holding.isEmpty();
            return searching
                    ? Answered.with(fill(choosing(request, holding), request, units))
                    : new Answered(Optional.of(problem), fill(refused(request, problem), request, units));
        }
    }

    private String fill(FitView view, FitRequest request, Units units) {
        return templates.fill("fit", view, units, FitAddress.link(request));
    }

    private FitView choosing(FitRequest request, List<PartSet> sets) {
        return new FitView(
                form(request, List.of()),
                List.of(),
                List.of(),
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                sets.stream().map(FitPage::link).toList(),
                Cautions.ofParts(),
                "/api/parts" + new Query().with("find", request.set()));
    }

    private FitView refused(FitRequest request, BadInputException problem) {
        return new FitView(
                form(request, List.of()),
                problem.getMessage().lines().toList(),
                problem.suggestions().stream().map(this::suggestion).toList(),
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Cautions.ofParts(),
                FitAddress.api(request));
    }

    private FitView answered(FitRequest request, FitAnswer answer) {
        Map<Boolean, List<ServingView>> brief = answer.inBrief().stream()
                .collect(Collectors.partitioningBy(
                        serving -> serving.verdict() == FitVerdict.DOES_NOT_FIT,
                        Collectors.mapping(ServingView::brief, Collectors.toList())));
        return new FitView(
                form(request, answer.everyBox() ? List.of() : answer.boxes()),
                List.of(),
                List.of(),
                FitSaid.asked(answer),
                FitSaid.lead(answer),
                answer.inFull().stream().map(ServingView::whole).toList(),
                brief.get(false),
                brief.get(true),
                SuppliedView.all(answer.supplies(), parts.catalogue()),
                answer.set()
                        .map(set -> PartFactsView.all(set, parts.catalogue()))
                        .orElse(List.of()),
                List.of(),
                Cautions.ofParts(),
                FitAddress.api(request));
    }

    private FitFormView form(FitRequest request, List<BuiltBox> boxes) {
        return FitFormView.of(request, parts.counter().boxes().values(), boxes);
    }

    private static LinkView link(PartSet set) {
        return new LinkView(FitWording.of(set), FitAddress.link(FitRequest.of(set.number())), false);
    }

    /** A number leads to its set; what else is near is only named. */
    private LinkView suggestion(String near) {
        Function<PartSet, LinkView> link = FitPage::link;
        return parts.catalogue().set(near).map(link).orElse(new LinkView(near, null, false));
    }
}
