package org.layshaft.web.json;

import java.util.List;
import org.layshaft.web.board.Look;
import org.layshaft.web.json.FindingsJson.FindingJson;

/**
 * A refusal in the form of RFC 9457, with everything that is wrong with a layout.
 *
 * @param findings in the text, and what it would break in other files
 */
public record BrokenLayoutJson(String type, String title, int status, String detail, List<FindingJson> findings) {
    public static BrokenLayoutJson of(Look look) {
        return new BrokenLayoutJson(
                ProblemJson.TYPES + ProblemKind.BROKEN.word(),
                ProblemKind.BROKEN.title(),
                ProblemKind.BROKEN.status(),
                look.unsolved()
                        .orElse("Something in the layout is broken, and it is not saved. Put right what is found."),
                look.broken().stream().map(FindingJson::of).toList());
    }
}
