package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.fit.FitCheck;
import org.layshaft.engine.fit.FitChecks;

class ChecksAndPagesTest {
    static List<FitCheck> checks() {
        return FitChecks.found().all();
    }

    @ParameterizedTest
    @MethodSource("checks")
    void everyCheckHasAPageUnderItsTitleThatTellsWhatItLooksAtWhenItHoldsAndWhere(FitCheck check) throws IOException {
        String page = page(check);
        assertEquals("# " + check.title(), page.lines().findFirst().orElseThrow());
        List<String> headings = Stream.of("**Looks at** ", "**Holds where** ", "**Source** ")
                .filter(heading ->
                        page.lines().filter(line -> line.startsWith(heading)).count() == 1)
                .toList();
        assertEquals(List.of("**Looks at** ", "**Holds where** ", "**Source** "), headings, check.id());
        assertTrue(page.lines().noneMatch(line -> line.startsWith("**") && !line.endsWith(".")), check.id());
    }

    @ParameterizedTest
    @MethodSource("checks")
    void idsAreWordsWithHyphensAndTitlesHeadings(FitCheck check) {
        assertTrue(check.id().matches("[a-z]+(-[a-z]+)*"), check.id());
        assertTrue(Character.isUpperCase(check.title().charAt(0)), check.title());
        assertFalse(check.title().endsWith("."), check.title());
    }

    @Test
    void noTwoChecksShareAnIdOrATitle() {
        assertEquals(
                checks().size(), checks().stream().map(FitCheck::id).distinct().count());
        assertEquals(
                checks().size(),
                checks().stream().map(FitCheck::title).distinct().count());
    }

    /** A check that is left out of the service file, or a page whose check is gone, is found here. */
    @Test
    void everyCheckAndEveryPageIsInService() throws IOException, URISyntaxException {
        Set<String> found = checks().stream()
                .map(check -> check.getClass().getSimpleName() + ".class")
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                found,
                files(FitChecks.class.getResource("check/NormalModule.class").toURI(), ".class"));
        Set<String> pages =
                checks().stream().map(check -> check.id() + ".md").collect(Collectors.toCollection(TreeSet::new));
        assertEquals(
                pages,
                files(FitChecks.class.getResource("check/normal-module.md").toURI(), ".md"));
    }

    private static Set<String> files(java.net.URI one, String ending) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(one).getParent())) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(ending) && (ending.equals(".md") || isCheck(name)))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static boolean isCheck(String file) {
        try {
            Class<?> type = Class.forName(
                    NormalModule.class.getPackageName() + "." + file.substring(0, file.length() - ".class".length()));
            return FitCheck.class.isAssignableFrom(type) && !java.lang.reflect.Modifier.isAbstract(type.getModifiers());
        } catch (ClassNotFoundException | NoClassDefFoundError gone) {
            return false;
        }
    }

    private static String page(FitCheck check) throws IOException {
        try (InputStream in = check.getClass().getResourceAsStream(check.id() + ".md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
