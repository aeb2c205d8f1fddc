package org.layshaft.web.json;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.MISSING;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Optional;
import org.layshaft.web.desk.BadInputException;

/**
 * A text that is to be looked at: {@code {"text": "…", "pack": "own", "gear": "3"}}.
 *
 * @param pack that it is to stand in
 * @param gear to be drawn
 */
public record LookAsked(String text, Optional<String> pack, Optional<String> gear) {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Throws {@link BadInputException} where it is not written so. */
    public static LookAsked read(String json) {
        try {
            JsonNode asked = MAPPER.readTree(json);
            if (asked == null || !asked.path("text").isTextual()) {
                throw new BadInputException(
                        MISSING, "There is no text to look at. Send an object like this: {\"text\": \"…\"}.");
            }
            return new LookAsked(asked.path("text").textValue(), text(asked, "pack"), text(asked, "gear"));
        } catch (JsonProcessingException e) {
            throw new BadInputException(
                    MALFORMED, "What was sent is no JSON. Send an object like this: {\"text\": \"…\"}.");
        }
    }

    private static Optional<String> text(JsonNode asked, String key) {
        return Optional.ofNullable(asked.path(key).textValue()).filter(text -> !text.isBlank());
    }
}
