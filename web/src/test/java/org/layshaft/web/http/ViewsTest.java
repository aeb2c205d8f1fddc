package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.Demo;
import org.layshaft.web.cli.Layshaft;

/** All layouts, a box at a glance, two side by side. */
class ViewsTest {
    private static Served served;

    @BeforeAll
    static void serve() {
        served = new Served();
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    static Stream<String> layouts() {
        return Demo.desk().knowledge().layouts().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void everyLayoutHasItsViews(String id) {
        for (String path : List.of("/box?layout=" + id, "/road?layout=" + id, "/compare?layout=curlew&with=" + id)) {
            HttpResponse<String> page = served.get(path);
            assertEquals(200, page.statusCode(), path);
            assertTrue(page.body().contains(Demo.layout(id).name()), path);
            assertFalse(page.body().contains("{{"), path);
        }
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void everyLayoutStandsInTheGallery(String id) {
        String page = served.get("/layouts").body();

        assertTrue(page.contains("src=\"/drawing/%s.svg\"".formatted(id)), page);
        assertTrue(page.contains("href=\"/box?layout=%s\"".formatted(id)), page);
    }

    @Test
    void theGallerySaysHowItUnderstood() {
        String page = served.get("/layouts?where=two-shaft,+five-speed,+reverse+on+a+sleeve,+pink")
                .body();

        assertTrue(page.contains("<span class=\"term\">2 shafts</span>"), page);
        assertTrue(page.contains("<span class=\"label\">Passed over, not understood</span> pink"), page);
        assertTrue(page.contains("1 of 25 layouts."), page);
        assertTrue(page.contains(">Sandpiper</a>"), page);
        assertFalse(page.contains(">Plover</a></h3>"), page);
    }

    @Test
    void whatTheGalleryCannotUseIsSaidAboveAll() {
        HttpResponse<String> page = served.get("/layouts?has=wings");

        assertEquals(404, page.statusCode());
        assertTrue(page.body().contains("wings"), page::body);
        assertTrue(page.body().contains("All 25 layouts."), page::body);
    }

    @Test
    void aGlance() {
        String page = served.get("/box?layout=curlew").body();

        assertTrue(page.contains("<td class=\"words\">24/47, 19/52</td>"), page);
        assertTrue(page.contains("<td class=\"words\">24/47, 17/23, 23/44</td>"), page);
        assertTrue(page.contains("<td class=\"words\">straight through</td>"), page);
        assertTrue(page.contains("keep the 1-2 rail, the 3-4 rail and the 5-R rail from moving together"), page);
        assertTrue(page.contains("span 5.360 to 1"), page);
        assertTrue(page.contains("The 6 ratios printed for it agree"), page);
        assertTrue(served.get("/box?layout=heron").body().contains("the catalogue tells of no box of it"));
    }

    @Test
    void twoSideBySide() {
        String page = served.get("/compare?layout=curlew&with=redshank").body();

        assertTrue(page.contains("<td>24.5 % less</td>"), page);
        assertTrue(page.contains("<tr><th scope=\"row\">overdrive top</th><td>no</td><td>yes</td></tr>"), page);
        assertTrue(page.contains(">SM-1040</a>"), page);
        String heron = served.get("/compare?layout=curlew&with=heron").body();
        assertTrue(heron.contains("cannot be told, a box of Heron in the catalogue is missing"), heron);
        assertTrue(served.get("/compare?layout=curlew&with=curlew").body().contains("In nothing that is looked at"));
    }

    /** The shared numbers by another road: every number that the catalogue tells of in a box of either. */
    @Test
    void sharedNumbersAreThoseOfBothCatalogues() throws Exception {
        JsonNode shared = json("/api/compare?layout=curlew&with=redshank").at("/sharedParts/value");

        List<String> both = Demo.desk().knowledge().catalogue().parts().keySet().stream()
                .filter(number -> standsIn("curlew", number) && standsIn("redshank", number))
                .sorted()
                .toList();
        assertFalse(both.isEmpty());
        assertEquals(both, shared.findValuesAsText("number").stream().sorted().toList());
    }

    private static boolean standsIn(String layout, String number) {
        return Demo.desk().knowledge().catalogue().builds().values().stream()
                .anyMatch(
                        build -> build.layout().equals(layout) && build.fitted().containsValue(number));
    }

    @ParameterizedTest
    @CsvSource({
        "gallery, /api/gallery",
        "gallery, /api/gallery?where=two-shaft+in+pink&has=overdrive&speeds=5",
        "compare, /api/compare?layout=curlew&with=redshank",
        "compare, /api/compare?layout=heron&with=knot"
    })
    void repliesKeepToTheirSchema(String schema, String path) {
        var published = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(served.get("/api/%s.schema.json".formatted(schema)).body(), InputFormat.JSON);

        assertEquals(List.of(), published.validate(served.get(path).body(), InputFormat.JSON));
        assertFalse(published.validate("{\"layouts\": []}", InputFormat.JSON).isEmpty());
    }

    @Test
    void theCommandLineFindsTheSame() {
        StringWriter out = new StringWriter();
        PrintWriter err = new PrintWriter(new StringWriter());
        String where = "transaxle, six-speed, reverse synchronised, purple";
        assertEquals(0, Layshaft.run(new PrintWriter(out), err, "layouts", "--where", where, "--json"));
        assertEquals(served.get("/api/gallery?where=" + Served.encoded(where)).body(), out.toString());

        StringWriter text = new StringWriter();
        assertEquals(0, Layshaft.run(new PrintWriter(text), err, "layouts", "--where", where));
        assertTrue(text.toString().contains("Passed over, not understood: purple."), text::toString);
        assertTrue(text.toString().lines().anyMatch(line -> line.strip().startsWith("lapwing")), text::toString);
    }

    /** With everything that it is shown with, as it goes over the wire: what stands above the fold at once. */
    @ParameterizedTest
    @CsvSource({
        "/layouts",
        "/box?layout=heron",
        "/road?layout=heron",
        "/?layout=heron",
        "/compare?layout=heron&with=crane"
    })
    void aPageIsLight(String path) throws Exception {
        int bytes = packed(path).length;
        for (String asset :
                List.of("layshaft.css", "views.css", "drawing.css", "layshaft.js", "look.js", "marks.svg")) {
            bytes += packed("/assets/" + asset).length;
        }
        if (path.equals("/layouts")) {
            for (Layout layout : Demo.desk().knowledge().layouts().values()) {
                bytes += packed("/drawing/%s.svg".formatted(layout.id())).length;
            }
        }
        assertTrue(bytes < 300_000, path + " weighs " + bytes);
    }

    @Test
    void whatIsPackedIsTheSame() throws Exception {
        String packed = new String(
                new GZIPInputStream(new ByteArrayInputStream(packed("/box?layout=curlew"))).readAllBytes(),
                StandardCharsets.UTF_8);

        assertEquals(served.get("/box?layout=curlew").body(), packed);
    }

    private static byte[] packed(String path) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(served.at(path))
                .header("Accept-Encoding", "gzip")
                .build();
        HttpResponse<byte[]> reply = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
        return reply.body();
    }

    private static JsonNode json(String path) throws Exception {
        return new ObjectMapper().readTree(served.get(path).body());
    }
}
