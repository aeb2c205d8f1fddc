package org.layshaft.web.desk;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.Question;

/** What to mind before anybody acts on an answer. */
public final class Cautions {
    private static final List<String> USUAL = List.of(
            "The maker's service data and torque values, local rules and licensed practice come first.",
            "Support the vehicle on stands before anybody goes under it, and keep clear of shafts that turn.",
            "Run wheels off the ground only when you know what the differential will do: an open one lets one wheel"
                    + " spin while the other stands.",
            "Do not drive on with broken teeth, or with a box that can lock.");

    private static final List<String> OF_PARTS = List.of(
            "The catalogue is no better than what was stated or measured. Before anything is ordered, hold it against the"
                    + " maker's data, and measure what is only stated.");

    private Cautions() {}

    /** Those of anybody who orders parts and fits them. */
    public static List<String> ofParts() {
        return Stream.concat(OF_PARTS.stream(), USUAL.stream()).toList();
    }

    /** Those of the failures supposed, and then the usual ones; none where nothing is supposed to be wrong. */
    public static List<String> of(Answer answer) {
        return Stream.concat(ofFaults(answer).stream(), usual(answer).stream()).toList();
    }

    /** Those that belong to the failures supposed. */
    public static List<String> ofFaults(Answer answer) {
        return answer.whatIf().cautions().stream()
                .distinct()
                .filter(caution -> !USUAL.contains(caution))
                .toList();
    }

    /** Those that hold whatever is wrong; none where nothing is supposed to be, and no parts are asked about. */
    public static List<String> usual(Answer answer) {
        if (answer.question() instanceof Question.OfParts) {
            return ofParts();
        }
        return answer.question().faults().isEmpty() ? List.of() : USUAL;
    }
}
