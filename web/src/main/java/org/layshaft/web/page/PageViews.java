package org.layshaft.web.page;

import java.util.List;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.asking.Question;
import org.layshaft.web.desk.ByHand;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.Desk;

/** Decides what a page shows. Thread-safe. */
final class PageViews {
    private final Desk desk;
    private final Examples examples;

    PageViews(Desk desk) {
        this.desk = desk;
        this.examples = new Examples(desk);
    }

    PageView of(Scene scene) {
        KnowledgeBase knowledge = desk.knowledge();
        FaultNaming words = desk.faultWords(scene.layout());
        return new PageView(
                title(scene, words),
                announcement(scene),
                layouts(scene),
                AskView.of(scene, examples.of(scene.layout())),
                scene.understanding()
                        .map(understanding -> ReadingView.of(understanding, scene))
                        .orElse(null),
                diagnosis(scene),
                new LinkView(
                        "What sounds at which frequency",
                        "/sound?layout=" + scene.layout().id(),
                        false),
                scene.answered() || !scene.faults().isEmpty() ? scene.answer().says() : List.of(),
                PartsLinks.of(scene.answer().question()),
                SupposedView.all(scene, knowledge, words),
                SheetView.of(scene, desk.hand()),
                scene.part()
                        .map(part -> PartView.of(part, scene, knowledge, words))
                        .orElse(null),
                VerdictView.all(scene),
                VerdictView.ofNeutral(scene),
                FaultTableView.of(scene),
                PairView.all(scene, true),
                PairView.all(scene, false),
                TurningView.all(scene),
                Cautions.ofFaults(scene.answer()),
                Cautions.usual(scene.answer()),
                PartGroupView.of(scene, part -> true),
                ElsewhereView.of(scene));
    }

    private static LinkView diagnosis(Scene scene) {
        String layout = scene.layout().id();
        if (scene.answer().question() instanceof Question.Suspects asked) {
            return diagnosis(
                    "All suspects, what speaks for and against each, and what to try next",
                    DiagnosisAddress.of(layout, asked.evidence()));
        }
        List<String> seen = scene.address().seen();
        return diagnosis(
                seen.isEmpty()
                        ? "Tell what is noticed, and see what may be wrong"
                        : "Back to the diagnosis that led here",
                new DiagnosisAddress(layout, seen));
    }

    private static LinkView diagnosis(String text, DiagnosisAddress address) {
        return new LinkView(text, address.link(), false);
    }

    private static String title(Scene scene, FaultNaming words) {
        List<Fault> faults = scene.faults();
        String state = faults.isEmpty()
                ? "sound"
                : String.join(", ", faults.stream().map(words::said).toList());
        return "%s, %s".formatted(scene.layout().name(), state);
    }

    private static String announcement(Scene scene) {
        if (scene.part().isPresent()) {
            return scene.part().get().name() + " is shown.";
        }
        if (scene.understanding().isPresent() && !scene.answered()) {
            return "The question was not understood in one way.";
        }
        return String.join(
                " ",
                scene.byHand().map(ByHand::says).orElseGet(() -> scene.answer().says()));
    }

    private List<PageView.LayoutView> layouts(Scene scene) {
        return desk.knowledge().layouts().values().stream()
                .map(layout -> new PageView.LayoutView(
                        layout.name(), layout.summary(), Address.of(layout.id()).link(), layout.equals(scene.layout())))
                .toList();
    }
}
