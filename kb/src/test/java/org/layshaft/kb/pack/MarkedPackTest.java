package org.layshaft.kb.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.kb.testing.Marked;

/** One pack with everything wrong, all of it found in one go. */
class MarkedPackTest {
    private static final Path PACK = Marked.resource("marked-pack");
    private static final Reading READING = PackReader.check(List.of(PACK));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pack.json",
                "catalogues/marked.json",
                "failure-modes/marked.json",
                "layouts/marked.json",
                "phrases/marked.json",
                "phrases/notation.json",
                "words/marked.json"
            })
    void finds_what_is_marked_in_each_file_and_no_more(String name) {
        Path file = PACK.resolve(name);
        Marked.check(
                file,
                READING.findings().stream()
                        .filter(finding -> finding.file().equals(file.toString()))
                        .toList(),
                true);
    }

    @Test
    void nothing_of_the_broken_pack_is_loaded() {
        KnowledgeBase knowledge = READING.knowledge();
        assertEquals(List.of("trade"), knowledge.packs().stream().map(Pack::id).toList());
        assertEquals(
                List.of(),
                knowledge.failureModes().stream()
                        .filter(mode -> mode.name().equals("bored"))
                        .toList());
        assertEquals(false, knowledge.words().terms().get("countershaft").also().contains("lay"));
    }

    @Test
    void findings_stand_in_the_order_of_files_and_lines() {
        List<String> places = READING.findings().stream()
                .map(finding -> "%s %04d".formatted(finding.file(), finding.line()))
                .toList();
        assertEquals(places.stream().sorted().toList(), places);
    }
}
