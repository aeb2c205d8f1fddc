package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.keeping.Version;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.start.Starts;
import org.layshaft.web.board.Library;

/** The drawing board as a page of forms and links. */
class BoardPageTest {
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
    void everyFamilyAndEveryLayoutIsOfferedAndEachIsSoundToBeginWith() {
        String page = served.get("/board").body();
        assertTrue(page.contains("/board?from=curlew\""), page);
        for (var start : Starts.all()) {
            assertTrue(page.contains("/board?start=" + start.id() + "\""), start.id());
            assertTrue(
                    served.get("/board?start=" + start.id()).body().contains("Sound: it can be loaded."), start.id());
        }
        String copy = served.get("/board?from=curlew").body();
        assertTrue(copy.contains("&quot;id&quot;: &quot;own-curlew&quot;"), copy);
        assertTrue(copy.contains("// All forward pairs share one centre distance"), copy);
        assertTrue(copy.contains("Sound: it can be loaded."), copy);
        assertEquals(404, served.get("/board?from=curlws").statusCode());
        assertEquals(404, served.get("/board?start=curlew").statusCode());
        assertEquals(404, served.get("/board?open=own/nothing").statusCode());
        assertEquals(404, served.get("/board?open=../x").statusCode());
    }

    @Test
    void aChoiceBetweenTwoTextsWithoutWhatIsThereIsRefusedAndTheTextComesBack() {
        for (String choice : new String[] {"over", "give-way"}) {
            for (String opened : new String[] {"", "zz", "own/../x"}) {
                HttpResponse<String> reply = served.post("/board", "text", DUNLIN, "do", choice, "opened", opened);

                assertEquals(422, reply.statusCode(), reply::body);
                assertTrue(reply.body().contains("It is not said which layout is meant."), reply::body);
                assertTrue(reply.body().contains("&quot;id&quot;: &quot;dunlin&quot;"), reply::body);
            }
        }
    }

    @Test
    void aCheckShowsFindingsAtTheirLinesAndKeepsTheText() {
        String text = DUNLIN.replace("\"teeth\": 40 }", "\"teeth\": 41 }").replace("20, \"meshes\"", "2, \"meshes\"");
        HttpResponse<String> reply = served.post("/board", "text", text.replace("\n", "\r\n"), "do", "check");

        assertEquals(200, reply.statusCode());
        assertTrue(reply.body().contains("<a href=\"#line-10\" data-line=\"10\">line 10</a>"), reply::body);
        assertTrue(reply.body().contains("<li id=\"line-10\">"), reply::body);
        assertTrue(reply.body().contains("&quot;teeth&quot;: 41"), reply::body);
        assertFalse(reply.body().contains("<svg"), reply::body);
    }

    @Test
    void whatWasSentIsEscaped() {
        String page = served.post("/board", "text", "</textarea><script>x</script>", "pack", "\"><i>")
                .body();
        assertFalse(page.contains("<script>x"), page);
        assertFalse(page.contains("<i>"), page);
    }

    @Test
    void savedOpenedChangedAndPutBack() {
        assertEquals("/board?open=own/avocets&done=saved", location(save(text("avocets"), "", "")));
        assertTrue(served.get("/?layout=avocets").body().contains("Dunlin"));
        String first = Version.of(text("avocets"));
        HttpResponse<String> opened = served.get("/board?open=own/avocets&done=saved");
        assertEquals(first, version(opened.body()));
        assertEquals(
                "same-origin", opened.headers().firstValue("Referrer-Policy").orElseThrow());

        location(save(other("avocets"), "own/avocets", first));
        String page = served.get("/board?open=own/avocets").body();
        assertTrue(page.contains("/board?open=own/avocets&amp;at=" + first), page);
        String earlier = served.get("/board?open=own/avocets&at=" + first).body();
        assertTrue(earlier.contains("This is an earlier version"), earlier);
        assertTrue(earlier.contains("Two-speed demonstration"), earlier);
        location(save(text("avocets"), "own/avocets", version(earlier)));
        assertTrue(served.get("/api/layouts/avocets").body().contains("Two-speed demonstration"));
    }

    @Test
    void overtakenBothVersionsAreShownAndEachChoiceKeepsBoth() throws IOException {
        location(save(text("knots"), "", ""));
        String first = Version.of(text("knots"));
        location(save(other("knots"), "own/knots", first));
        String mine = text("knots").replace("Dunlin", "Mine");

        HttpResponse<String> conflict = save(mine, "own/knots", first);
        assertEquals(409, conflict.statusCode());
        String page = conflict.body();
        assertTrue(page.contains("only yours: "), page);
        assertTrue(page.contains("only theirs: "), page);
        String theirs = version(page);
        assertEquals(Version.of(other("knots")), theirs);
        assertEquals(other("knots"), onDisk("knots"));

        location(board("copy", mine, "own/knots", theirs, "as", "knots-of-mine"));
        assertTrue(onDisk("knots-of-mine").contains("\"id\": \"knots-of-mine\""));
        assertEquals(other("knots"), onDisk("knots"));

        assertEquals("/board?open=own/knots&done=aside", location(board("give-way", mine, "own/knots", theirs)));
        assertEquals(other("knots"), onDisk("knots"));
        assertTrue(Files.exists(folder.resolve(".history/knots/" + Version.of(mine) + ".json")));

        location(board("over", mine, "own/knots", theirs));
        assertEquals(mine, onDisk("knots"));
        assertTrue(Files.exists(folder.resolve(".history/knots/" + theirs + ".json")));
    }

    @Test
    void whatIsBrokenMayBeSavedAsADraftWhichIsNotLoaded() throws IOException {
        String broken = text("ibises").replace("\"teeth\": 20, \"meshes\"", "\"teeth\": 2, \"meshes\"");
        HttpResponse<String> refused = save(broken, "", "");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Not saved, because something is broken."), refused::body);

        assertEquals("/board?open=own/ibises/draft&done=draft", location(board("draft", broken, "", "")));
        assertEquals(404, served.get("/api/layouts/ibises").statusCode());
        String page = served.get("/board?open=own/ibises/draft").body();
        location(save(text("ibises"), "own/ibises/draft", version(page)));
        assertEquals(200, served.get("/api/layouts/ibises").statusCode());
        assertTrue(Files.notExists(folder.resolve("own/layouts/ibises.json.draft")));

        String unreadable = "{ \"id\": \"crakes\", ";
        assertEquals("/board?open=own/crakes/draft&done=draft", location(board("draft", unreadable, "", "")));
        assertEquals(422, board("draft", "nothing", "", "").statusCode());
    }

    @Test
    void whatTheDiskDoesNotTakeStaysOnThePage() throws IOException {
        Files.writeString(folder.resolve("blocked"), "a file where a folder is to be");
        HttpResponse<String> reply = served.post("/board", "text", text("terns"), "do", "save", "pack", "blocked");
        assertEquals(507, reply.statusCode());
        assertTrue(reply.body().contains("could not be saved"), reply::body);
        assertTrue(reply.body().contains("&quot;id&quot;: &quot;terns&quot;"), reply::body);
        assertEquals(
                422,
                served.post("/board", "text", text("terns"), "do", "save", "pack", "../x")
                        .statusCode());
    }

    @Test
    void aFamilyIsDownloadedAsAFile() {
        HttpResponse<String> reply = served.post("/board", "text", DUNLIN, "do", "download");
        assertEquals(DUNLIN, reply.body());
        assertEquals(
                "attachment; filename=\"dunlin.json\"",
                reply.headers().firstValue("Content-Disposition").orElseThrow());
    }

    @Test
    void whereThereIsNoFolderThatIsSaidAndNothingIsSaved() {
        try (Served reading = new Served()) {
            String page = reading.get("/board?start=dunlin").body();
            assertTrue(page.contains("Saving is off"), page);
            assertFalse(page.contains("value=\"save\""), page);
            HttpResponse<String> refused = reading.post("/board", "text", DUNLIN, "do", "save");
            assertEquals(403, refused.statusCode());
            assertTrue(refused.body().contains("&quot;id&quot;: &quot;dunlin&quot;"), refused::body);
        }
    }

    private static HttpResponse<String> save(String text, String opened, String version) {
        return board("save", text, opened, version);
    }

    private static HttpResponse<String> board(String what, String text, String opened, String version, String... more) {
        return served.post(
                "/board",
                "text",
                text,
                "do",
                what,
                "pack",
                "own",
                "opened",
                opened,
                "version",
                version,
                more.length > 0 ? more[0] : "gear",
                more.length > 0 ? more[1] : "");
    }

    private static String location(HttpResponse<String> reply) {
        assertEquals(303, reply.statusCode(), reply::body);
        return reply.headers().firstValue("Location").orElseThrow();
    }

    private static String version(String page) {
        Matcher version =
                Pattern.compile("name=\"version\" value=\"([0-9a-f]*)\"").matcher(page);
        assertTrue(version.find(), page);
        return version.group(1);
    }

    private static String onDisk(String id) throws IOException {
        return Files.readString(folder.resolve("own/layouts/" + id + ".json"));
    }

    private static String text(String id) {
        return DUNLIN.replace("\"id\": \"dunlin\"", "\"id\": \"%s\"".formatted(id));
    }

    private static String other(String id) {
        return text(id).replace("Two-speed", "Another two-speed");
    }
}
