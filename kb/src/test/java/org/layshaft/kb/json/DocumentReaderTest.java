package org.layshaft.kb.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.kb.finding.Finding;

class DocumentReaderTest {

    @Test
    void comments_and_trailing_commas_are_read_over() {
        Document document = sound("""
                // of the truck
                { "a": [1, 2, /* three */], }
                """);
        assertEquals("{\"a\":[1,2]}", document.root().toString());
    }

    @Test
    void every_value_has_the_line_of_its_key() {
        Document document = sound("{\n\"a\":\n1,\n\"b\": [\n2,\n{ \"c/d\": 3 }]}");
        assertEquals(1, document.line(""));
        assertEquals(2, document.line("/a"));
        assertEquals(5, document.line("/b/0"));
        assertEquals(6, document.line("/b/1/c~1d"));
        assertEquals(4, document.line("/b/7/missing"), "what is not there has the line of what is around it");
    }

    @Test
    void numbers_keep_the_zeros_they_are_typed_with() {
        Item item = sound("{ \"ratio\": 1.000 }").item().get("ratio");
        assertEquals(Optional.of(new BigDecimal("1.000")), item.decimal());
    }

    @Test
    void a_byte_order_mark_is_skipped() {
        assertEquals("{}", sound("\uFEFF{}").root().toString());
    }

    @Test
    void of_a_key_that_stands_twice_the_first_is_kept() {
        DocumentReader.Read read =
                read("{\n\"a\": 1,\n\"b\": 2,\n\"a\": { \"x\": [3] }\n}".getBytes(StandardCharsets.UTF_8));
        assertEquals("{\"a\":1,\"b\":2}", read.document().orElseThrow().root().toString());
        Finding finding = read.report().findings().get(0);
        assertEquals("/a", finding.pointer());
        assertEquals(4, finding.line());
        assertEquals("The key 'a' stands twice in one object, first on line 2.", finding.what());
    }

    @Test
    void what_cannot_be_read_is_told_with_line_and_column() {
        Finding finding = onlyFinding("{\n  \"teeth\": 24\n  \"free\": true\n}");
        assertEquals(3, finding.line());
        assertEquals("This cannot be read as JSON: line 3, column 3.", finding.what());
        assertEquals("\"", finding.value());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    ''                     | The file is empty.
                    ' '                    | The file is empty.
                    // nothing             | There is nothing in the file but comments.
                    {                      | The file ends in the middle of an object, a list or a text.
                    {"a": "b               | The file ends in the middle of an object, a list or a text.
                    {} {}                  | There is more after the end of the object.
                    {"a": 1e999999999}     | The number is beyond anything a gearbox has.
                    {"a": 1e99999999999999999999} | The number is beyond anything a gearbox has.
                    {"a": 11111111112222222222333333333344444444445} | A number has more than 40 digits.
                    {"a": NaN}             | This cannot be read as JSON: line 1, column 10.
                    {'a': 1}               | This cannot be read as JSON: line 1, column 2.
                    """)
    void tells_in_a_sentence_why_a_file_is_unreadable(String text, String what) {
        assertEquals(what, onlyFinding(text).what());
    }

    @Test
    void depth_is_limited() {
        sound("[".repeat(50) + "]".repeat(50));
        assertEquals(
                "Objects and lists lie more than 50 deep in one another.",
                onlyFinding("[".repeat(100_000)).what());
    }

    @Test
    void size_is_limited() {
        sound("[]" + " ".repeat(DocumentReader.LARGEST_BYTES - 2));
        assertEquals(
                "The file is larger than 1,000,000 bytes.",
                onlyFinding(" ".repeat(DocumentReader.LARGEST_BYTES + 1)).what());
    }

    @Test
    void bytes_that_are_no_text_are_told_by_line() {
        byte[] bytes = "{\n\"a\": \"x\"}".getBytes(StandardCharsets.UTF_8);
        bytes[8] = (byte) 0xFF;
        Finding finding = read(bytes).report().findings().get(0);
        assertEquals(2, finding.line());
        assertEquals("The file is not text in UTF-8: a byte of line 2 stands for no letter.", finding.what());
        assertEquals("byte 0xFF", finding.value());
    }

    private static Document sound(String text) {
        DocumentReader.Read read = read(text.getBytes(StandardCharsets.UTF_8));
        assertEquals(List.of(), read.report().findings());
        return read.document().orElseThrow();
    }

    private static Finding onlyFinding(String text) {
        DocumentReader.Read read = read(text == null ? new byte[0] : text.getBytes(StandardCharsets.UTF_8));
        assertTrue(read.document().isEmpty());
        assertEquals(1, read.report().findings().size());
        return read.report().findings().get(0);
    }

    private static DocumentReader.Read read(byte[] bytes) {
        return DocumentReader.read("box.json", bytes);
    }
}
