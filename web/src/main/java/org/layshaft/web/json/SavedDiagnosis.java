package org.layshaft.web.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.BadInputException.Kind;
import org.layshaft.web.desk.Diagnosis;

/**
 * An unfinished diagnosis, to be put away and taken up again.
 *
 * @param seen what was noticed, as written
 */
public record SavedDiagnosis(String format, String layout, List<String> seen) {
    static final String FORMAT = "layshaft/diagnosis/1";

    public static SavedDiagnosis of(Diagnosis diagnosis) {
        Evidence evidence = diagnosis.evidence();
        return new SavedDiagnosis(
                FORMAT,
                diagnosis.layout().id(),
                Stream.concat(
                                evidence.observations().stream().map(Observation::written),
                                evidence.afterWork() ? Stream.of(Evidence.AFTER_WORK) : Stream.of())
                        .toList());
    }

    /** Throws {@link BadInputException} where this is no saved diagnosis; it says everything that is wrong. */
    public static SavedDiagnosis read(String text) {
        JsonNode saved;
        try {
            saved = new ObjectMapper().readTree(text);
        } catch (JsonProcessingException e) {
            throw new BadInputException(
                    Kind.MALFORMED, "This is no saved diagnosis: it is not JSON. Paste the whole of what was saved.");
        }
        List<String> problems = new ArrayList<>();
        if (saved == null || !FORMAT.equals(saved.path("format").asText())) {
            problems.add("Its \"format\" is not \"%s\".".formatted(FORMAT));
        }
        if (saved == null || !saved.path("layout").isTextual()) {
            problems.add("Its \"layout\" is missing.");
        }
        if (saved == null || !saved.path("seen").isArray()) {
            problems.add("Its \"seen\" is no list.");
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(
                    Kind.MALFORMED,
                    "This is no saved diagnosis. %s Paste the whole of what was saved."
                            .formatted(String.join(" ", problems)));
        }
        List<String> seen = new ArrayList<>();
        saved.path("seen").forEach(each -> seen.add(each.asText()));
        return new SavedDiagnosis(FORMAT, saved.path("layout").asText(), seen);
    }
}
