package org.layshaft.kb.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.layshaft.kb.finding.Finding;

class ReportTest {
    private final Report schema = Report.on("box.json");
    private final Report meaning = Report.on("box.json");

    @Test
    void what_is_spoilt_is_not_complained_of_twice() {
        schema.broken("/shafts/output/along/3/mesh", "unknown key", "mesh", "");
        meaning.broken("/shafts/output/along/3", "meshes with nothing", "third", "");
        meaning.broken("/shafts/output/along/3/mesh/0", "dangles", "x", "");
        meaning.broken("/shafts/output/along/3/front", "out of reach", "second", "");
        meaning.broken("/shafts/output/along/30", "meshes with nothing", "fourth", "");
        meaning.broken("/shafts/output", "empty", "output", "");
        schema.addWhereUnspoilt(meaning);
        assertEquals(List.of("unknown key", "out of reach", "meshes with nothing", "empty"), told());
    }

    @Test
    void what_is_wrong_with_the_whole_file_spoils_nothing_in_it() {
        schema.broken("", "lacks the key", "", "");
        schema.broken("/colour", "unknown key", "colour", "");
        meaning.broken("/shafts", "no shafts", "", "");
        schema.addWhereUnspoilt(meaning);
        assertEquals(List.of("lacks the key", "unknown key", "no shafts"), told());
    }

    @Test
    void values_are_shown_on_one_line_and_not_too_long() {
        schema.broken("", "odd", "a\n\tb\u0000" + "c".repeat(100), "");
        assertEquals(
                "a  b\uFFFD" + "c".repeat(74) + "…", schema.findings().get(0).value());
    }

    private List<String> told() {
        return schema.findings().stream().map(Finding::what).toList();
    }
}
