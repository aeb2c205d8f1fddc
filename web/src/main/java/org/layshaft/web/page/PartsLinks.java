package org.layshaft.web.page;

import java.util.Optional;
import org.layshaft.web.asking.Question;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.PartsRequests;
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
        } else if (question instanceof Question.PutIn put) {
            return new LinkView(
                    "Box and vehicle before and after, gear by gear", SwapAddress.link(PartsRequests.of(put)), false);
        } else if (question instanceof Question.Measured measured) {
            return new LinkView(
                    "What else agrees, and what to measure next", IdentifyPage.link(PartsRequests.of(measured)), false);
        }
        return question instanceof Question.OfParts wish
                ? new LinkView(
                        "Now, wished and offered, side by side", WishAddress.link(PartsRequests.wish(wish)), false)
                : null;
    }

    private static LinkView fit(String text, FitRequest request) {
        return new LinkView(text, FitAddress.link(request), false);
    }
}
