package org.layshaft.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.Demo;
import org.layshaft.web.desk.SoundDesk;
import org.layshaft.web.desk.SoundRequest;

/** What a box sounds keeps to the published schema, in every gear of every layout, with and without a speed. */
class SoundSchemaTest {
    private static final SoundDesk DESK = new SoundDesk(Demo.desk());
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaFiles.of("sound").orElseThrow(), InputFormat.JSON);

    static Stream<Layout> layouts() {
        return Demo.desk().knowledge().layouts().values().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void everyGearKeepsToIt(Layout layout) {
        Demo.desk().box(layout).gears().forEach(gear -> {
            assertKeeps(request(layout.id(), gear.name(), Optional.empty(), Optional.empty()));
            assertKeeps(request(layout.id(), gear.name(), Optional.of("1500"), Optional.of("100")));
        });
    }

    @Test
    void neutralAndARoadSpeedKeepToIt() {
        assertKeeps(request("curlew", "N", Optional.empty(), Optional.empty()));
        assertKeeps(new SoundRequest(
                Optional.of("curlew"),
                Optional.of("4"),
                Optional.empty(),
                Optional.empty(),
                Optional.of("40"),
                Optional.of("300"),
                Optional.of("30 Hz"),
                Optional.of("2"),
                Optional.of("1")));
    }

    @Test
    void anotherShapeDoesNot() {
        String json = Json.write(SoundJson.of(DESK.listen(request("curlew", "N", Optional.empty(), Optional.empty()))));
        assertFalse(errors(json.replace("\"untold\"", "\"unsaid\"")).isEmpty());
        assertFalse(errors(json.replace("\"mesh\"", "\"gnashing\"")).isEmpty());
    }

    private static void assertKeeps(SoundRequest request) {
        assertEquals(List.of(), errors(Json.write(SoundJson.of(DESK.listen(request)))), request::toString);
    }

    private static List<Error> errors(String json) {
        return SCHEMA.validate(json, InputFormat.JSON);
    }

    private static SoundRequest request(String layout, String gear, Optional<String> rpm, Optional<String> hz) {
        return new SoundRequest(
                Optional.of(layout),
                Optional.of(gear),
                rpm,
                Optional.empty(),
                Optional.empty(),
                hz,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
