package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.BenchDesk;
import org.layshaft.web.desk.BenchRequest;
import org.layshaft.web.desk.Units;

/** The page of the bench: what a measured gear may be, and what a spline measures. Thread-safe. */
public final class IdentifyPage {
    private final Templates templates;

    IdentifyPage(Templates templates) {
        this.templates = templates;
    }

    /** The page; what cannot be used is said on it, above the form to put it right in. */
    public Answered answer(BenchRequest request, Units units) {
        String api = "/api/identify" + query(request);
        if (request.isEmpty()) {
            return Answered.with(fill(IdentifyView.of(request, List.of(), Optional.empty(), api), request, units));
        }
        try {
            return Answered.with(fill(
                    IdentifyView.of(request, List.of(), Optional.of(BenchDesk.identify(request)), api),
                    request,
                    units));
        } catch (BadInputException problem) {
            List<String> trouble = problem.getMessage().lines().toList();
            return new Answered(
                    Optional.of(problem),
                    fill(IdentifyView.of(request, trouble, Optional.empty(), api), request, units));
        }
    }

    private String fill(IdentifyView view, BenchRequest request, Units units) {
        return templates.fill("identify", view, units, link(request));
    }

    static String link(BenchRequest request) {
        return "/identify" + query(request);
    }

    private static Query query(BenchRequest request) {
        return new Query()
                .with("form", request.form())
                .with("teeth", request.teeth())
                .with("tip", request.tip())
                .with("root", request.root())
                .with("span", request.spans())
                .with("pins", request.pins())
                .with("helix", request.helix())
                .with("centre", request.centre())
                .with("spline", request.spline())
                .with("hub", request.hub());
    }
}
