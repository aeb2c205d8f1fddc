package org.layshaft.web.asking.understanding;

import java.util.List;
import java.util.Set;

/** A failure that is said not to be there: "3-4 fork not bent". It must not be taken for one that is. */
final class Denial {
    /** Words that deny; none of them must be taken for a mistyped other. */
    static final Set<String> DENYING = Set.of(
            "not", "isnt", "arent", "wasnt", "werent", "aint", "never", "no", "dont", "doesnt", "didnt", "hasnt",
            "havent", "hadnt", "wont", "wouldnt", "cant", "cannot", "couldnt", "nor");

    private Denial() {}

    /** Whether a way of failing is denied by the word before it, or before what tells how or which way. */
    static boolean of(Heard heard, Mention mode) {
        int at = mode.from();
        while (heard.endingAt(at).filter(told -> !told.told().isEmpty()).isPresent()) {
            at = heard.endingAt(at).orElseThrow().from();
        }
        return DENYING.contains(heard.word(at - 1));
    }

    static FaultsHeard.Problem problem(BoxWords words, FaultClue clue) {
        String part = clue.parts().size() == 1
                ? words.names().the(clue.parts().get(0))
                : "the " + clue.part().typed();
        return new FaultsHeard.Problem(
                "It says that %s is not %s. Leave out what is sound, and name only what is wrong."
                        .formatted(part, clue.mode().typed()),
                List.of());
    }
}
