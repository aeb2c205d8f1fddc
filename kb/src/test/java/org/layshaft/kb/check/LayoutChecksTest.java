package org.layshaft.kb.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.kb.json.Document;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.parts.LayoutBuilder;
import org.layshaft.kb.testing.Marked;
import org.layshaft.kb.typed.LayoutReading;
import org.layshaft.kb.typed.TypedLayout;

/** Each check has a file of its own, in which it fires at the marked lines and nearly fires at others. */
class LayoutChecksTest {
    private static final Path CASES = Marked.resource("check-cases");

    static Stream<LayoutCheck> checks() {
        return LayoutChecks.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("checks")
    void finds_what_is_marked_in_its_file_and_no_more(LayoutCheck check) throws IOException {
        Path file = CASES.resolve(fileOf(check));
        Document document = DocumentReader.read(file.toString(), Files.readAllBytes(file))
                .document()
                .orElseThrow();
        TypedLayout typed = LayoutReading.of(document.item());
        Report report = Report.on(document);
        check.run(typed, LayoutBuilder.build(typed), report);
        assertFalse(report.findings().isEmpty());
        Marked.check(file, report.findings(), false);
    }

    @ParameterizedTest
    @MethodSource("checks")
    void all_checks_together_find_nothing_else_there(LayoutCheck check) {
        Path file = CASES.resolve(fileOf(check));
        Marked.check(file, PackReader.check(List.of(file)).findings(), true);
    }

    @Test
    void every_case_belongs_to_a_check() throws IOException {
        try (Stream<Path> files = Files.list(CASES)) {
            assertEquals(
                    checks().map(LayoutChecksTest::fileOf).sorted().toList(),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void checks_are_listed_in_order() {
        List<String> names = checks().map(LayoutChecksTest::fileOf).toList();
        assertEquals(names.stream().sorted().toList(), names);
    }

    private static String fileOf(LayoutCheck check) {
        String words = check.getClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-");
        return words.toLowerCase(Locale.ROOT) + ".json";
    }
}
