package org.layshaft.web.jar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as a user starts it, in a process of its own. */
class RunnableJarIT {
    private static final Path JAR = Path.of("target", "layshaft.jar");
    private static final String QUESTION = "which gears still work if the 3-4 fork is bent";
    private static final Map<String, String> IN_DOUBT =
            Map.of("1", "works", "2", "works", "3", "uncertain", "4", "uncertain", "5", "works", "R", "works");

    @TempDir
    private Path folder;

    @Test
    void answers_on_the_command_line_and_over_http_alike() throws Exception {
        Run asked = run("ask", "--layout", "curlew", "--json", QUESTION);
        assertEquals(0, asked.exit(), asked.error());
        assertEquals(new TreeMap<>(IN_DOUBT), verdicts(asked.output()));
        assertEquals(asked.output(), overHttp(), "the page's API gives the same bytes");
    }

    @Test
    void refuses_bad_input_with_a_sentence_and_status_2() throws Exception {
        Run refused = run("gears", "curlew", "--fault", "9-10 fork bent");
        assertEquals(2, refused.exit());
        assertEquals("", refused.output());
        assertTrue(refused.error().contains("3-4 fork"), refused.error());
        assertTrue(!refused.error().contains("Exception"), refused.error());
    }

    @Test
    void lists_without_reasoning() throws Exception {
        Run listed = run("layouts");
        assertEquals(0, listed.exit(), listed.error());
        assertTrue(listed.output().contains("plover"), listed.output());
    }

    private static Map<String, String> verdicts(String json) throws IOException {
        Map<String, String> verdicts = new TreeMap<>();
        for (JsonNode gear : new ObjectMapper().readTree(json).get("gears")) {
            verdicts.put(gear.get("gear").asText(), gear.get("verdict").asText());
        }
        return verdicts;
    }

    private String overHttp() throws Exception {
        Process serving = java("serve", "--port", "0").redirectErrorStream(true).start();
        try {
            BufferedReader said =
                    new BufferedReader(new InputStreamReader(serving.getInputStream(), StandardCharsets.UTF_8));
            String ready = said.readLine();
            String address = ready.substring(ready.indexOf("http"));
            URI uri = URI.create(
                    address + "api/ask?layout=curlew&q=" + URLEncoder.encode(QUESTION, StandardCharsets.UTF_8));
            return HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(uri).build(), BodyHandlers.ofString(StandardCharsets.UTF_8))
                    .body();
        } finally {
            serving.destroy();
            assertTrue(serving.waitFor(20, TimeUnit.SECONDS), "the server stops when told");
        }
    }

    private record Run(int exit, String output, String error) {}

    private Run run(String... arguments) throws Exception {
        Path output = folder.resolve("output");
        Path error = folder.resolve("error");
        Process process = java(arguments)
                .redirectOutput(output.toFile())
                .redirectError(error.toFile())
                .start();
        return new Run(process.waitFor(), Files.readString(output), Files.readString(error));
    }

    private static ProcessBuilder java(String... arguments) {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command);
    }
}
