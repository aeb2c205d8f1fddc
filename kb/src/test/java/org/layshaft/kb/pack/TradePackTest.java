package org.layshaft.kb.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.kb.failure.EffectKind;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.NoticeLine;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.words.Term;
import org.layshaft.kb.words.Words;

/** Rules for the whole of the trade pack: a mode or word that is half done fails here. */
class TradePackTest {
    private static final Reading READING = PackReader.check(List.of());
    private static final Words WORDS = READING.knowledge().words();

    static Stream<FailureMode> modes() {
        return READING.knowledge().failureModes().stream();
    }

    static Stream<Term> terms() {
        return Stream.of(WORDS.terms(), WORDS.notices(), WORDS.conditions(), WORDS.told())
                .flatMap(group -> group.values().stream());
    }

    @Test
    void is_sound() {
        assertEquals(List.of(), READING.findings());
    }

    @Test
    void holds_the_first_set_of_modes() {
        Set<String> ids = new HashSet<>(modes().map(FailureMode::id).toList());
        List<String> firstSet = List.of(
                "fork/bent",
                "fork/broken",
                "gear/stripped",
                "gear/seized",
                "shaft/cut",
                "blocking-ring/worn",
                "clutching-teeth/rounded",
                "hub/stripped",
                "sleeve/stuck",
                "detent/weak",
                "interlock-piece/missing",
                "interlock/missing",
                "half-shaft/broken",
                "clutch/dragging");
        assertEquals(
                List.of(), firstSet.stream().filter(id -> !ids.contains(id)).toList());
    }

    @Test
    void every_effect_is_used_by_some_mode() {
        Set<EffectKind> used = new HashSet<>();
        modes().forEach(mode -> mode.effects().forEach(effect -> used.add(effect.kind())));
        assertEquals(Set.of(EffectKind.values()), used);
    }

    @Test
    void every_occasion_is_used_by_some_mode() {
        assertEquals(
                Set.of(NoticeWhen.values()),
                modes().flatMap(mode -> mode.noticed().stream())
                        .map(NoticeLine::when)
                        .collect(Collectors.toSet()));
    }

    @Test
    void every_notice_is_shown_by_some_mode_or_has_sorts_that_are() {
        Set<String> shown = modes().flatMap(mode -> mode.noticed().stream())
                .map(NoticeLine::notice)
                .collect(Collectors.toSet());
        Set<String> unused = new TreeSet<>(WORDS.notices().keySet());
        unused.removeAll(shown);
        assertEquals(Set.of("noise"), unused);
    }

    @Test
    void every_kind_of_part_can_fail() {
        assertEquals(
                Set.of(PartKind.values()), modes().map(FailureMode::befalls).collect(Collectors.toSet()));
    }

    @Test
    void modes_stand_with_the_most_common_first() {
        List<FailureMode> modes = modes().toList();
        for (int next = 1; next < modes.size(); next++) {
            assertTrue(modes.get(next - 1).common().compareTo(modes.get(next).common()) <= 0);
        }
    }

    @ParameterizedTest
    @MethodSource("modes")
    void every_mode_is_told_whole(FailureMode mode) {
        assertFalse(mode.noticed().isEmpty());
        assertFalse(mode.also().isEmpty());
        assertFalse(mode.cautions().isEmpty());
        assertEquals(mode.normal(), mode.leadsTo().isEmpty());
        Stream.concat(
                        Stream.of(mode.confirm(), mode.basis()),
                        Stream.concat(mode.cautions().stream(), mode.leadsTo().stream()))
                .forEach(TradePackTest::isASentence);
        assertTrue(mode.confirm().matches("(First f|F)rom outside.*"), mode.confirm());
    }

    @ParameterizedTest
    @MethodSource("modes")
    void every_notice_of_a_mode_is_known_to_the_words(FailureMode mode) {
        assertEquals(
                List.of(),
                mode.noticed().stream()
                        .map(NoticeLine::notice)
                        .filter(notice -> !WORDS.notices().containsKey(notice))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("modes")
    void everything_asked_of_a_fault_can_be_told_in_words(FailureMode mode) {
        mode.unlessTold().forEach((what, values) -> {
            assertTrue(WORDS.told().containsKey(what), what);
            values.stream()
                    .filter(value -> !value.equals(FailureMode.ANY_PLACE))
                    .forEach(value -> assertTrue(WORDS.told().containsKey(value), value));
        });
    }

    @Test
    void one_word_does_not_stand_for_two_modes_of_one_kind() {
        Set<String> seen = new HashSet<>();
        modes().forEach(mode -> mode.words()
                .forEach(word -> assertTrue(seen.add(mode.befalls() + " " + word), () -> mode.id() + " " + word)));
    }

    @ParameterizedTest
    @MethodSource("terms")
    void every_word_has_synonyms_and_a_meaning(Term term) {
        assertFalse(term.also().isEmpty());
        assertFalse(term.also().contains(term.name()));
        isASentence(term.means());
    }

    @Test
    void the_conditions_are_the_situations_and_what_may_hold_in_any_of_them() {
        Set<String> conditions =
                Arrays.stream(Situation.values()).map(Situation::word).collect(Collectors.toCollection(TreeSet::new));
        Arrays.stream(Heat.values()).map(Heat::word).forEach(conditions::add);
        conditions.add("after-work");
        assertEquals(conditions, new TreeSet<>(WORDS.conditions().keySet()));
    }

    @Test
    void one_word_does_not_stand_for_two_notices_nor_for_two_conditions() {
        for (Map<String, Term> group : List.of(WORDS.notices(), WORDS.conditions())) {
            Set<String> seen = new HashSet<>();
            group.forEach((id, term) -> Stream.concat(Stream.of(term.name()), term.also().stream())
                    .forEach(word -> assertTrue(seen.add(word), () -> id + " " + word)));
        }
    }

    private static void isASentence(String text) {
        assertTrue(text.matches("[A-Z'].*[.]"), text);
    }
}
