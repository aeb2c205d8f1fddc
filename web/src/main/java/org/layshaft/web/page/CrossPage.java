package org.layshaft.web.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SetShape;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.CrossChoice;
import org.layshaft.web.desk.CrossDesk;
import org.layshaft.web.desk.CrossRequest;
import org.layshaft.web.desk.CrossWording;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.FitWording;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.page.CrossView.CellView;
import org.layshaft.web.page.CrossView.ColumnView;
import org.layshaft.web.page.CrossView.RowView;
import org.layshaft.web.page.FitFormView.ChoiceView;

/** The page of sets against boxes. Thread-safe. */
public final class CrossPage {
    private static final CrossTable NOTHING = new CrossTable(List.of(), List.of(), Map.of());

    private final PartsDesk parts;
    private final CrossDesk desk;
    private final Templates templates;

    CrossPage(PartsDesk parts, Templates templates) {
        this.parts = parts;
        this.desk = parts.cross();
        this.templates = templates;
    }

    /** The page; where companions are wanted and not worked out yet, the table without them, and how far it is. */
    public Answered answer(CrossRequest request) {
        try {
            CrossChoice choice = desk.choice(request);
            Optional<CrossTable> whole = request.companions() ? desk.withCompanions() : Optional.empty();
            CrossTable table = choice.of(whole.orElseGet(desk::asTheyAre));
            boolean waiting = request.companions() && whole.isEmpty();
            return Answered.with(fill(request, List.of(), table, whole.isPresent(), waiting));
        } catch (BadInputException problem) {
            List<String> trouble = problem.getMessage().lines().toList();
            return new Answered(Optional.of(problem), fill(request, trouble, NOTHING, false, false));
        }
    }

    private String fill(
            CrossRequest request, List<String> trouble, CrossTable table, boolean companions, boolean waiting) {
        return templates.fill(
                "cross",
                new CrossView(
                        trouble,
                        FitFormView.boxes(request.box(), parts.counter().boxes().values()),
                        choices(SetShape.values(), SetShape::word, SetShape::word, request.shape()),
                        choices(FitVerdict.values(), FitVerdict::word, FitVerdict::spoken, request.verdict()),
                        companions,
                        waiting ? "%d of %d sets".formatted(desk.done(), desk.size()) : null,
                        table.boxes().stream()
                                .map(box -> new ColumnView(
                                        box.build().name(),
                                        box.build().serials().words()))
                                .toList(),
                        table.sets().stream()
                                .map(set -> row(set, table, companions))
                                .toList(),
                        "/cross.csv" + query(request),
                        "/api/cross" + query(request)));
    }

    private static <T> List<ChoiceView> choices(
            T[] all, Function<T, String> word, Function<T, String> spoken, Optional<String> chosen) {
        return Stream.of(all)
                .map(each -> new ChoiceView(
                        word.apply(each),
                        spoken.apply(each).replace('-', ' '),
                        chosen.filter(word.apply(each)::equals).isPresent()))
                .toList();
    }

    private static RowView row(PartSet set, CrossTable table, boolean companions) {
        return new RowView(
                FitWording.of(set),
                FitAddress.link(FitRequest.of(set.number())),
                table.boxes().stream()
                        .map(box -> cell(set, box, table.at(set, box), companions))
                        .toList());
    }

    private static CellView cell(PartSet set, BuiltBox box, CrossTable.Cell cell, boolean companions) {
        String text = CrossWording.brief(cell, companions);
        if (cell == null) {
            return new CellView("", null, text, null, null);
        }
        return new CellView(
                MarkView.verdict(cell.best()),
                MarkView.of(cell.best()),
                text,
                FitAddress.link(FitRequest.of(set.number()).in(box.build().id())),
                "%s in %s".formatted(set.number(), box.build().name()));
    }

    private static Query query(CrossRequest request) {
        return new Query()
                .with("box", request.box())
                .with("shape", request.shape())
                .with("verdict", request.verdict())
                .with("companions", request.companions() ? Optional.of("yes") : Optional.empty());
    }
}
