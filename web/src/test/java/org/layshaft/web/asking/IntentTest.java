package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.pack.KnowledgeBase;

class IntentTest {
    @Test
    void theSchemaOfPhrasesNamesEveryIntentAndNoOther() throws IOException {
        String schema = "/org/layshaft/kb/schema/phrases.schema.json";
        try (InputStream in = KnowledgeBase.class.getResourceAsStream(schema)) {
            JsonNode named = new ObjectMapper().readTree(in).at("/properties/phrases/items/properties/intent/enum");
            List<String> intents = Stream.concat(
                            Arrays.stream(Intent.values()).map(Intent::word),
                            Stream.of(
                                    "declined",
                                    "group",
                                    "failing",
                                    "following",
                                    "quiet",
                                    "not-noticed",
                                    "break",
                                    "aside"))
                    .toList();
            assertEquals(
                    intents,
                    StreamSupport.stream(named.spliterator(), false)
                            .map(JsonNode::asText)
                            .toList());
        }
    }
}
