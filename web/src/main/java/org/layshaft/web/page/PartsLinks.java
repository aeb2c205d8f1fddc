package org.layshaft.web.page;

import java.util.Optional;
import org.layshaft.web.asking.Question;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.SwapRequest;

/** Where more stands of what a question about parts asks. */
final class PartsLinks {
    private PartsLinks() {}

    /** Null for a question about something else. */
    static LinkView of(Question question) {
        if (question instanceof Question.Fits fits) {
            return fit(
                    "Every place and every check, with both numbers",
                    new FitRequest(Optional.of(fits.set()), fits.box(), Optional.empty(), fits.place()));
        } else if (question instanceof Question.FitsHere here) {
            return fit(
                    "Everything that could stand there",
                    new FitRequest(Optional.empty(), Optional.of(here.box()), Optional.empty(), here.place()));
        } else if (question instanceof Question.Supplied supplied) {
            return fit("What it is, and where it serves", FitRequest.of(supplied.set()));
        } else if (question instanceof Question.OtherTyres tyres) {
            SwapRequest swap = SwapRequest.of(tyres.layout()).onTyre(Optional.of(tyres.before()), tyres.after());
            return new LinkView("What the tyres do in every gear", SwapAddress.link(swap), false);
        }
        return null;
    }

    private static LinkView fit(String text, FitRequest request) {
        return new LinkView(text, FitAddress.link(request), false);
    }
}
