package org.layshaft.kb.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.IOException;
import java.util.Optional;

/** Changes a text at the top of a JSON file and leaves all else as it was typed, comments and spaces included. */
public final class RootText {
    private RootText() {}

    /** The same with another text under this key of the outermost object; unchanged where there is no text under it. */
    public static String with(String json, String key, String value) {
        return place(json, key)
                .map(place -> json.substring(0, place.from()) + quoted(value) + json.substring(place.to()))
                .orElse(json);
    }

    private record Place(int from, int to) {}

    private static Optional<Place> place(String json, String key) {
        try (JsonParser parser = DocumentReader.parser(json)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String here = parser.currentName();
                JsonToken value = parser.nextToken();
                if (here.equals(key) && value == JsonToken.VALUE_STRING) {
                    int from = (int) parser.currentTokenLocation().getCharOffset();
                    parser.finishToken();
                    return Optional.of(
                            new Place(from, (int) parser.currentLocation().getCharOffset()));
                }
                parser.skipChildren();
            }
            return Optional.empty();
        } catch (JsonProcessingException broken) {
            return Optional.empty();
        } catch (IOException impossible) {
            throw new IllegalStateException("reading from memory failed", impossible);
        }
    }

    private static String quoted(String value) {
        return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(value)) + '"';
    }
}
