package org.layshaft.kb.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;

/**
 * A JSON file that could be read.
 *
 * @param file its name, as the reader would open it
 * @param lines the line, from 1, of every value by its JSON pointer; of its key, for a value in an object
 */
public record Document(String file, JsonNode root, Map<String, Integer> lines) {
    public Item item() {
        return new Item(root, "");
    }

    /** The line of this place, or of the nearest place around it that has one. */
    public int line(String pointer) {
        for (String place = pointer; !place.isEmpty(); place = Pointers.parent(place)) {
            Integer line = lines.get(place);
            if (line != null) {
                return line;
            }
        }
        return lines.getOrDefault("", 1);
    }
}
