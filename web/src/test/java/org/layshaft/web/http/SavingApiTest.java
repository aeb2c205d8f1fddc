package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.start.Starts;
import org.layshaft.web.board.Library;
import org.layshaft.web.json.SchemaFiles;

/** Looking at layouts and saving them over HTTP. */
class SavingApiTest {
    private static final String DUNLIN = Starts.of("dunlin").orElseThrow().text();

    @TempDir
    private static Path folder;

    private static Served served;

    @BeforeAll
    static void serve() {
        served = new Served(Library.over(PackSource.onClassPath(), Optional.of(Shelf.in(folder))));
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @Test
    void whatIsSavedIsKnownAtOnceAndReplacedByWhoeverKnowsIt() throws IOException {
        assertEquals(404, served.get("/api/layouts/sanderlings").statusCode());
        HttpResponse<String> created = put("sanderlings", "If-None-Match", "*");
        assertEquals(201, created.statusCode(), created::body);
        assertEquals(
                "/api/layouts/sanderlings",
                created.headers().firstValue("Location").orElseThrow());
        assertEquals(text("sanderlings"), Files.readString(folder.resolve("own/layouts/sanderlings.json")));
        assertEquals(200, served.get("/api/gears?layout=sanderlings").statusCode());
        assertTrue(served.get("/?layout=sanderlings").body().contains("Dunlin"));

        HttpResponse<String> read = served.get("/api/layouts/sanderlings/text");
        assertEquals(text("sanderlings"), read.body());
        assertEquals(tag(created), tag(read));

        String changed = text("sanderlings").replace("Two-speed", "Three-speed");
        HttpResponse<String> replaced =
                served.sendJson("PUT", "/api/layouts/sanderlings", changed, "If-Match", tag(read));
        assertEquals(200, replaced.statusCode(), replaced::body);
        assertTrue(served.get("/api/layouts/sanderlings").body().contains("Three-speed"));

        HttpResponse<String> late =
                served.sendJson("PUT", "/api/layouts/sanderlings", text("sanderlings"), "If-Match", tag(read));
        assertEquals(412, late.statusCode(), late::body);
        assertEquals(tag(replaced), tag(late));
        assertEquals(412, put("sanderlings", "If-None-Match", "*").statusCode());
        assertEquals(428, put("sanderlings").statusCode());
        assertEquals(200, put("sanderlings", "If-Match", "*").statusCode());
    }

    @Test
    void ofSeveralThatSaveAtOnceOneGetsInAndTheOthersAreTold() {
        String tag = tag(put("stilt", "If-None-Match", "*"));
        List<CompletableFuture<Integer>> replies = IntStream.range(0, 4)
                .mapToObj(writer -> CompletableFuture.supplyAsync(() -> served.sendJson(
                                "PUT",
                                "/api/layouts/stilt",
                                text("stilt").replace("Two-speed", "By writer " + writer + ", two-speed"),
                                "If-Match",
                                tag)
                        .statusCode()))
                .toList();
        assertEquals(
                List.of(200, 412, 412, 412),
                replies.stream().map(CompletableFuture::join).sorted().toList());
    }

    @Test
    void whatIsBrokenIsNotSavedAndEverythingThatIsWrongIsTold() throws JsonProcessingException {
        String broken = text("ruffs")
                .replace("\"teeth\": 20, \"meshes\"", "\"teeth\": 2, \"meshes\"")
                .replace("\"free\": true", "\"fre\": true");
        HttpResponse<String> reply = served.sendJson("PUT", "/api/layouts/ruffs", broken, "If-None-Match", "*");

        assertEquals(422, reply.statusCode());
        assertEquals(Reply.PROBLEM, reply.headers().firstValue("Content-Type").orElseThrow());
        JsonNode findings = new ObjectMapper().readTree(reply.body()).get("findings");
        assertTrue(findings.findValuesAsText("line").containsAll(List.of("10", "19")), reply::body);
        assertTrue(Files.notExists(folder.resolve("own/layouts/ruffs.json")));
    }

    @Test
    void namesThatCannotBeAndIdsThatAreNotTheSameAreRefused() {
        String cut = served.sendJson("PUT", "/api/layouts/one", "{\"id\"", "If-None-Match", "*")
                .body();
        assertTrue(cut.contains("No id can be read in the text that is sent."), cut);
        assertEquals(422, put("con", "If-None-Match", "*").statusCode());
        assertEquals(
                422,
                served.sendJson("PUT", "/api/layouts/other", text("one"), "If-None-Match", "*")
                        .statusCode());
        assertEquals(
                422,
                served.sendJson("PUT", "/api/layouts/one?pack=..", text("one"), "If-None-Match", "*")
                        .statusCode());
    }

    @Test
    void whatTheDiskDoesNotTakeIsToldAndLeavesNothing() throws IOException {
        Files.writeString(folder.resolve("taken"), "a file where a folder is to be");
        HttpResponse<String> reply =
                served.sendJson("PUT", "/api/layouts/terns?pack=taken", text("terns"), "If-None-Match", "*");
        assertEquals(507, reply.statusCode(), reply::body);
        assertTrue(reply.body().contains("could not be saved"), reply::body);
        assertEquals(404, served.get("/api/layouts/terns").statusCode());
    }

    @Test
    void whereThereIsNoFolderNothingIsSaved() {
        try (Served reading = new Served()) {
            HttpResponse<String> reply = reading.sendJson("PUT", "/api/layouts/dunlin", DUNLIN, "If-None-Match", "*");
            assertEquals(403, reply.statusCode());
            assertTrue(reply.body().contains("serve --write"), reply::body);
        }
    }

    @Test
    void aLookLoadsNothingAndKeepsToItsSchema() throws IOException {
        String before = served.get("/api/layouts").body();
        HttpResponse<String> sound = look(text("looked-at"));
        HttpResponse<String> broken = look("{");

        for (HttpResponse<String> reply : List.of(sound, broken)) {
            assertEquals(200, reply.statusCode(), reply::body);
            assertEquals(
                    List.of(),
                    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(SchemaFiles.of("look").orElseThrow(), InputFormat.JSON)
                            .validate(reply.body(), InputFormat.JSON));
        }
        JsonNode look = new ObjectMapper().readTree(sound.body());
        assertEquals("4", look.at("/gears/0/ratio/exact").asText());
        assertTrue(look.get("svg").asText().startsWith("<svg"));
        assertTrue(new ObjectMapper().readTree(broken.body()).get("svg").isNull());
        assertEquals(before, served.get("/api/layouts").body());
        assertEquals(200, served.get("/api/look.schema.json").statusCode());
    }

    @Test
    void aUnitThatIsLoadedMayBeUsedAndOneThatIsNotIsTold() throws JsonProcessingException {
        String joined = """
                {"format": "layshaft/layout/1", "id": "joined", "units": {"box": "curlew", "axle": "ruff"},
                 "joins": [{"from": "box-output", "to": "axle-input"}]}
                """;
        JsonNode look = new ObjectMapper().readTree(look(joined).body());
        assertEquals("joined", look.get("layout").asText(), look::toString);
        JsonNode missing = new ObjectMapper()
                .readTree(look(joined.replace("curlew", "curlws")).body());
        assertTrue(missing.at("/findings/0/what").asText().contains("no layout 'curlws'"), missing::toString);
    }

    @Test
    void theSchemaOfLayoutsIsServed() throws JsonProcessingException {
        assertEquals(
                "urn:layshaft:schema:layout:1",
                new ObjectMapper()
                        .readTree(served.get("/api/layout.schema.json").body())
                        .get("$id")
                        .asText());
    }

    private static HttpResponse<String> look(String text) {
        return served.sendJson(
                "POST",
                "/api/board/look",
                new ObjectMapper().createObjectNode().put("text", text).toString());
    }

    private static HttpResponse<String> put(String id, String... headers) {
        return served.sendJson("PUT", "/api/layouts/" + id, text(id), headers);
    }

    private static String text(String id) {
        return DUNLIN.replace("\"id\": \"dunlin\"", "\"id\": \"%s\"".formatted(id));
    }

    private static String tag(HttpResponse<String> reply) {
        return reply.headers().firstValue("ETag").orElseThrow();
    }
}
