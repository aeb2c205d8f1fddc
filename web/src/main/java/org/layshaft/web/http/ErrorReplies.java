package org.layshaft.web.http;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.http.Route.Face;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.ProblemJson;
import org.layshaft.web.json.ProblemKind;
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

    Reply of(BadInputException problem, String address, Face face) {
        return of(ProblemJson.of(problem).at(address), face);
    }

    Reply of(ProblemKind kind, String detail, String address, Face face) {
        return of(ProblemJson.of(kind, detail, List.of()).at(address), face);
    }

    /** For what we did not foresee: logged whole, answered with one sentence. */
    Reply ofOurFault(RuntimeException problem, String address, Face face) {
        LOG.log(Level.ERROR, () -> "No answer could be given at " + address, problem);
        return of(ProblemKind.OUR_FAULT, OUR_FAULT, address, face);
    }

    Reply of(ProblemJson problem, Face face) {
        if (face == Face.API) {
            return Reply.of(problem.status(), Reply.PROBLEM, Json.write(problem));
        }
        return Reply.of(
                problem.status(), Reply.HTML, pages.refusal(problem.title(), problem.detail(), problem.suggestions()));
    }
}
