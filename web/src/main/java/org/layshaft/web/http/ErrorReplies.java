package org.layshaft.web.http;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.http.Route.Face;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.ProblemJson;
import org.layshaft.web.json.Problems;
import org.layshaft.web.page.Pages;

/** The one place that turns what went wrong into a reply. */
final class ErrorReplies {
    private static final Logger LOG = System.getLogger(ErrorReplies.class.getName());
    private static final String OUR_FAULT =
            "Something went wrong on our side. Its trace stands in the console where Layshaft was started.";

    private final Pages pages;

    ErrorReplies(Pages pages) {
        this.pages = pages;
    }

    Reply of(BadInputException problem, Face face) {
        return of(Problems.of(problem), face);
    }

    /** For what we did not foresee: logged whole, answered with one sentence. */
    Reply ofOurFault(RuntimeException problem, String path, Face face) {
        LOG.log(Level.ERROR, () -> "No answer could be given at " + path, problem);
        return of(500, "Our fault", OUR_FAULT, face);
    }

    Reply of(int status, String title, String detail, Face face) {
        return of(ProblemJson.of(title, status, detail, List.of()), face);
    }

    private Reply of(ProblemJson problem, Face face) {
        if (face == Face.API) {
            return Reply.of(problem.status(), Reply.PROBLEM, Json.write(problem));
        }
        return Reply.of(
                problem.status(), Reply.HTML, pages.refusal(problem.title(), problem.detail(), problem.suggestions()));
    }
}
