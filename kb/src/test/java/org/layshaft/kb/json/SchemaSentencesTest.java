package org.layshaft.kb.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.kb.finding.Finding;

class SchemaSentencesTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    "colour": 1                    | /colour         | colour | It can be: format, id, name, summary, module_mm, helix_deg, pressure_angle_deg, shafts, units, joins, input, output, take_off, differential, differentials, clutch, selector, printed, road, names.
                    "summery": ""                  | /summery        | summery | Perhaps 'summary' is meant.
                    "module_mm": 0                 | /module_mm      | 0      | Normal module, in mm, of every gear that states none. Default: not known, and centre distances cannot be checked.
                    "selector": {"interlock":"pin"} | /selector/interlock | pin | Perhaps 'pins' is meant.
                    "selector": {"gate":["1","1"]} | /selector/gate  | ["1","1"] | Base names of the rails in the order in which the lever passes them. Default: the order of the rails.
                    "differential": {}             | /differential   | ''     | Add it: The gear on the case of the differential, unless that is fixed on a shaft and says so with 'on'. Default: none.
                    "differential": {"ring_gear":{"teeth":69},"half_shafts":["left"]} | /differential/half_shafts | ["left"] | The two sides that the half-shafts go to. Default: left and right; their parts are left-half-shaft and right-half-shaft.
                    "differential": {"ring_gear":{"teeth":4}} | /differential/ring_gear/teeth | 4 | Number of teeth, 5 to 400.
                    "input": "the input"           | /input          | the input | Letters, digits, hyphens and underscores, at most 60.
                    "names": {"a/b": {"name": 3}}  | /names/a~1b/name | 3     | What the part is called. Default: the name it has without this.
                    """)
    void names_the_value_and_says_what_to_do(String key, String pointer, String value, String advice) {
        Finding finding = onlyFinding(key);
        assertEquals(pointer, finding.pointer());
        assertEquals(value == null ? "" : value, finding.value());
        assertEquals(advice, finding.advice());
        assertEquals(2, finding.line());
    }

    private static Finding onlyFinding(String key) {
        String text =
                "{ \"format\": \"layshaft/layout/1\", \"id\": \"x\", \"shafts\": { \"input\": { \"along\": [] } },%n%s }"
                        .formatted(key);
        Document document = DocumentReader.read("box.json", text.getBytes(StandardCharsets.UTF_8))
                .document()
                .orElseThrow();
        Report report = Report.on(document);
        Schemas.check("layout", document, report);
        assertEquals(1, report.findings().size(), () -> report.findings().toString());
        return report.findings().get(0);
    }
}
