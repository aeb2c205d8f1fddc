package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.ParseOptions;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.web.Demo;
import org.layshaft.web.board.Library;
import org.layshaft.web.http.Route.Face;
import org.layshaft.web.json.SchemaFiles;

/** The description of the API says what the handlers really do: addresses, parameters, answers and refusals. */
class OpenApiTest {
    private static final JsonNode DESCRIPTION = read(SchemaFiles.openApi());
    private static final String HERE = "urn:layshaft:api/";
    private static final SchemaRegistry SCHEMAS = SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(OpenApiTest::described));

    private static Served served;

    @BeforeAll
    static void serve() {
        served = new Served();
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    /** By an independent reader (swagger-parser). */
    @Test
    void itIsOpenApi() {
        ParseOptions asItStands = new ParseOptions();
        asItStands.setResolve(false);

        assertEquals(
                List.of(),
                new OpenAPIV3Parser()
                        .readContents(SchemaFiles.openApi(), null, asItStands)
                        .getMessages());
    }

    @Test
    void itNamesEveryAddressOfTheApiAndNoOther() {
        Set<String> described = new TreeSet<>();
        DESCRIPTION
                .get("paths")
                .fields()
                .forEachRemaining(path -> path.getValue()
                        .fieldNames()
                        .forEachRemaining(method -> described.add(method.toUpperCase(Locale.ROOT) + " "
                                + path.getKey().replaceAll("\\{[a-z]+}", "*"))));

        assertEquals(
                routes().flatMap(route ->
                                route.methods().keySet().stream().map(method -> method + " " + route.pattern()))
                        .collect(Collectors.toCollection(TreeSet::new)),
                described);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void everyParameterIsReadAndNoOther(Operation operation) {
        Route route = routes().filter(each -> each.pattern().equals(operation.pattern()))
                .findFirst()
                .orElseThrow();
        Set<String> read = new TreeSet<>();
        for (Map<String, List<String>> query : operation.oneByOne()) {
            Map<String, List<String>> watched = new HashMap<>(query) {
                private static final long serialVersionUID = 1;

                @Override
                public List<String> getOrDefault(Object name, List<String> otherwise) {
                    read.add((String) name);
                    return super.getOrDefault(name, otherwise);
                }
            };
            route.endpoint().answer(new Call(operation.path(), operation.rest(), watched));
        }

        assertEquals(operation.queryNames(), read);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void everyExampleIsAnsweredAsDescribed(Operation operation) {
        for (Map<String, List<String>> query : operation.oneByOne()) {
            assertDescribed(operation, operation.address(query), Set.of(200));
        }
    }

    @ParameterizedTest
    @MethodSource("operations")
    void whatIsLeftOutOrMakesNoSenseIsRefusedAsDescribed(Operation operation) {
        for (JsonNode parameter : operation.parameters("query")) {
            String name = parameter.get("name").asText();
            Map<String, List<String>> senseless = new LinkedHashMap<>(operation.needed(parameter));
            senseless.put(name, List.of("curlw ¤ <b>"));
            assertDescribed(operation, operation.address(senseless), Set.of(200, 400, 404, 422));
            if (parameter.path("required").asBoolean()) {
                Map<String, List<String>> without = new LinkedHashMap<>(operation.needed(parameter));
                without.remove(name);
                assertDescribed(operation, operation.address(without), Set.of(400, 422));
            }
        }
    }

    @Test
    void everyKindOfRefusalHasItsPage() {
        JsonNode refusal = read(served.get("/api/gears?layout=curlw").body());

        assertEquals("/api/gears?layout=curlw", refusal.get("instance").asText());
        HttpResponse<String> page = served.get(refusal.get("type").asText());
        assertEquals(200, page.statusCode());
        assertTrue(page.body().contains(refusal.get("title").asText()), page::body);
        assertEquals(404, served.get("/problems/rain").statusCode());
    }

    static Stream<Operation> operations() {
        return Operation.all(DESCRIPTION).stream();
    }

    private static Stream<Route> routes() {
        return Routes.over(Library.fixed(Demo.desk())).stream().filter(route -> Face.of(route.pattern()) == Face.API);
    }

    private static void assertDescribed(Operation operation, String address, Set<Integer> statuses) {
        HttpResponse<String> reply = served.get(address);
        String status = String.valueOf(reply.statusCode());
        assertTrue(statuses.contains(reply.statusCode()), () -> address + " gave " + status + " " + reply.body());
        JsonNode response = operation.node().at("/responses/" + status);
        assertTrue(response.isObject(), () -> address + " gave " + status + ", which is not described");
        String at = response.has("$ref")
                ? response.get("$ref").asText()
                : "#/paths/%s/get/responses/%s".formatted(operation.path().replace("/", "~1"), status);
        JsonNode content = DESCRIPTION.at(at.substring(1)).get("content");
        String media = reply.headers().firstValue("Content-Type").orElseThrow();
        assertTrue(content.has(media), () -> address + " gave " + media);
        if (media.startsWith("text/plain")) {
            return;
        }
        Schema schema = SCHEMAS.getSchema(SchemaLocation.of(HERE
                + "openapi.json"
                + at.replace("{", "%7B").replace("}", "%7D")
                + "/content/"
                + media.replace("/", "~1")
                + "/schema"));
        assertEquals(List.of(), schema.validate(reply.body(), InputFormat.JSON), address);
    }

    private static String described(String address) {
        String name = address.substring(address.lastIndexOf('/') + 1);
        return name.equals("openapi.json")
                ? SchemaFiles.openApi()
                : SchemaFiles.of(name.replace(".schema.json", "")).orElse(null);
    }

    private static JsonNode read(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
