package org.layshaft.engine.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.kie.api.definition.rule.Rule;

/** What must hold of all rules together. */
class RuleCoverageTest {
    private static final Path SOURCES = Path.of("src/main/resources/org/layshaft/engine/rules");
    private static final Pattern RULE = Pattern.compile("rule \"([^\"]+)\"\\s+@id\\(\"([^\"]+)\"\\)");
    private static final Pattern SENTENCE = Pattern.compile("[A-Z][^.!?]* [^.!?]*[a-z]");
    private static final Pattern ID = Pattern.compile("[a-z]+/[a-z]+(-[a-z]+)*");

    /** Which file the rules of an area stand in, where it is not called as the area is. */
    private static final Map<String, String> FILES =
            Map.of("path", "verdicts", "verdict", "verdicts", "lost", "verdicts", "notice", "notices");

    @Test
    void every_rule_fires_in_a_case_of_its_own() {
        List<String> subjects =
                RuleCases.all().map(RuleCase::rule).distinct().sorted().toList();
        assertEquals(ids(), subjects);
        RuleCases.all()
                .forEach(each -> assertTrue(
                        Derivation.from(each.given()).rulesThatFired().contains(each.rule()), each.toString()));
    }

    @Test
    void every_rule_has_an_id_of_its_own() {
        assertEquals(ids().stream().distinct().toList(), ids());
        assertEquals(
                List.of(),
                ids().stream().filter(id -> !ID.matcher(id).matches()).toList());
    }

    @Test
    void every_rule_is_named_by_a_sentence_of_its_own() {
        List<String> names = rules().map(Rule::getName).sorted().toList();
        assertEquals(names.stream().distinct().toList(), names);
        assertEquals(
                List.of(),
                names.stream().filter(name -> !SENTENCE.matcher(name).matches()).toList());
    }

    @Test
    void every_rule_stands_in_the_file_of_its_area() {
        List<String> misplaced = sources()
                .flatMap(file -> idsIn(file)
                        .filter(id ->
                                !file.getFileName().toString().equals(FILES.getOrDefault(area(id), area(id)) + ".drl"))
                        .map(id -> "%s in %s".formatted(id, file.getFileName())))
                .toList();
        assertEquals(List.of(), misplaced);
    }

    @Test
    void the_compiled_rules_are_those_of_the_files() {
        assertEquals(sources().flatMap(RuleCoverageTest::idsIn).sorted().toList(), ids());
    }

    private static List<String> ids() {
        return rules().map(RuleId::of).sorted().toList();
    }

    private static Stream<Rule> rules() {
        return RuleBase.builtIn().getKiePackages().stream().flatMap(rules -> rules.getRules().stream());
    }

    private static String area(String id) {
        return id.substring(0, id.indexOf('/'));
    }

    private static Stream<Path> sources() {
        try (Stream<Path> files = Files.list(SOURCES)) {
            return files.toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<String> idsIn(Path file) {
        try {
            return RULE.matcher(Files.readString(file)).results().map((MatchResult rule) -> rule.group(2));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
