package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Evidence;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.DiagnosisDesk;
import org.layshaft.web.json.SavedDiagnosis;

/** The page that goes back from what is noticed to what may be wrong. Thread-safe. */
public final class SuspectsPage {
    private final Desk desk;
    private final DiagnosisDesk diagnosis;
    private final Templates templates;

    SuspectsPage(Desk desk, Templates templates) {
        this.desk = desk;
        this.diagnosis = desk.diagnosis();
        this.templates = templates;
    }

    /**
     * What is answered.
     *
     * @param movedTo the address of the diagnosis with what a form added; empty where nothing was, or it could not be used
     * @param html the page; empty where it has moved
     */
    public record Answer(Optional<String> movedTo, String html) {}

    /** Throws {@link BadInputException} where the address itself cannot be used. */
    public Answer answer(SuspectsRequest request) {
        Layout layout = request.layout()
                .map(desk::layout)
                .orElseGet(() -> desk.knowledge().layouts().values().iterator().next());
        try {
            Optional<String> moved = moved(request, layout);
            if (moved.isPresent()) {
                return new Answer(moved, "");
            }
        } catch (BadInputException e) {
            return new Answer(
                    Optional.empty(),
                    page(request, layout, e.getMessage().lines().toList()));
        }
        return new Answer(Optional.empty(), page(request, layout, List.of()));
    }

    private Optional<String> moved(SuspectsRequest request, Layout layout) {
        if (request.saved().isPresent()) {
            SavedDiagnosis saved = SavedDiagnosis.read(request.saved().get());
            Layout of = desk.layout(saved.layout());
            Evidence evidence = diagnosis.evidence(of, saved.seen());
            return Optional.of(DiagnosisAddress.of(of.id(), evidence).link());
        }
        if (request.added().isEmpty()) {
            return Optional.empty();
        }
        List<String> all = new ArrayList<>(request.seen());
        all.addAll(request.added());
        Evidence evidence = diagnosis.evidence(layout, all);
        return Optional.of(DiagnosisAddress.of(layout.id(), evidence).link());
    }

    private String page(SuspectsRequest request, Layout layout, List<String> trouble) {
        return templates.fill(
                "suspects",
                SuspectsView.of(
                        diagnosis.diagnose(layout, diagnosis.evidence(layout, request.seen())),
                        desk.box(layout),
                        desk.knowledge().words(),
                        desk.names(layout),
                        observation -> diagnosis.say(layout, observation),
                        layouts(layout),
                        trouble,
                        request.words().or(request::saved).orElse("")));
    }

    private List<LinkView> layouts(Layout current) {
        return desk.knowledge().layouts().values().stream()
                .map(layout -> new LinkView(
                        layout.name(), new DiagnosisAddress(layout.id(), List.of()).link(), layout.equals(current)))
                .toList();
    }
}
