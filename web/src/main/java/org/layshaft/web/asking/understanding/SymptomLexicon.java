package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.api.Evidence;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.words.Term;
import org.layshaft.kb.words.Words;

/** Every word that counts where somebody tells of one box what they notice. */
final class SymptomLexicon {
    private static final List<String> EXCEPT =
            List.of("except", "except for", "excepting", "apart from", "other than", "bar", "save for", "aside from");

    private final Map<List<String>, Sign> signs = new HashMap<>();
    private int longest;

    /** @param layouts all that are known; their names change nothing */
    SymptomLexicon(Words words, Box box, Iterable<Layout> layouts, SymptomPhrases phrases) {
        words.notices()
                .forEach((id, term) -> forms(id, term)
                        .forEach(form -> inflected(form).forEach(each -> add(each, new Sign.OfNotice(id)))));
        EXCEPT.forEach(form -> add(Tokens.normal(form), new Sign.Except()));
        phrases.quiet().forEach(form -> add(form, new Sign.Quiet()));
        phrases.notNoticed().forEach(form -> add(form, new Sign.Not()));
        phrases.breaks().forEach(form -> add(form, new Sign.Break()));
        words.conditions()
                .forEach((id, term) -> condition(id)
                        .ifPresent(sign ->
                                forms(id, term).forEach(form -> variants(form).forEach(each -> add(each, sign)))));
        gears(box);
        layouts.forEach(layout ->
                Stream.of(layout.name(), layout.id()).forEach(name -> add(Tokens.normal(name), new Sign.Aside())));
        phrases.leadIns().forEach(form -> add(form, new Sign.Aside()));
        phrases.asides().forEach(form -> add(form, new Sign.Aside()));
        Heard.LINKS.forEach(link -> add(List.of(link), new Sign.Aside()));
        add(List.of("gear"), new Sign.Aside());
    }

    /** The longest run of words from here that stands for something, and how long it is. */
    Optional<Map.Entry<Sign, Integer>> at(List<Token> tokens, int from) {
        for (int length = Math.min(longest, tokens.size() - from); length > 0; length--) {
            List<String> run = tokens.subList(from, from + length).stream()
                    .map(Token::text)
                    .toList();
            Sign sign = signs.get(run);
            if (sign != null) {
                return Optional.of(Map.entry(sign, length));
            }
        }
        return Optional.empty();
    }

    /** Every single word that occurs. */
    Set<String> words() {
        Set<String> words = new HashSet<>();
        signs.keySet().forEach(words::addAll);
        return words;
    }

    private void gears(Box box) {
        List<String> names = box.gears().stream().map(Box.DerivedGear::name).toList();
        names.forEach(name -> add(Tokens.normal(name), new Sign.In(List.of(name))));
        List<String> forward = box.gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .map(Box.DerivedGear::name)
                .toList();
        if (!forward.isEmpty()) {
            add(List.of("top"), new Sign.In(List.of(forward.get(forward.size() - 1))));
            add(List.of("bottom"), new Sign.In(List.of(forward.get(0))));
        }
        add(List.of("all", "gear"), new Sign.In(names));
        add(List.of("every", "gear"), new Sign.In(names));
    }

    private static Optional<Sign> condition(String id) {
        if (id.equals(Evidence.AFTER_WORK)) {
            return Optional.of(new Sign.AfterWork());
        }
        Stream<Sign> situations = Arrays.stream(Situation.values())
                .filter(situation -> situation.word().equals(id))
                .map(Sign.When::new);
        Stream<Sign> heats = Arrays.stream(Heat.values())
                .filter(heat -> heat.word().equals(id))
                .map(Sign.Warm::new);
        return Stream.concat(situations, heats).findFirst();
    }

    private static List<List<String>> forms(String id, Term term) {
        return Stream.concat(Stream.of(term.name(), id, term.says()), term.also().stream())
                .map(Tokens::normal)
                .filter(form -> !form.isEmpty())
                .distinct()
                .toList();
    }

    /** {@code jump out}, and {@code jumping out} as well. */
    private static List<List<String>> inflected(List<String> form) {
        List<List<String>> all = new ArrayList<>(List.of(form));
        String verb = form.get(0);
        if (verb.length() > 3 && verb.chars().allMatch(Character::isLetter)) {
            String stem = verb.endsWith("e") ? verb.substring(0, verb.length() - 1) : verb;
            for (String ing : List.of(stem + "ing", stem + stem.charAt(stem.length() - 1) + "ing")) {
                List<String> other = new ArrayList<>(form);
                other.set(0, ing);
                all.add(other);
            }
        }
        return all;
    }

    /** {@code shifting into gear} without its gear, {@code going in} as {@code going into} too. */
    private static List<List<String>> variants(List<String> form) {
        List<List<String>> all = new ArrayList<>(List.of(form));
        int last = form.size() - 1;
        if (last > 0 && form.get(last).equals("gear") && !form.get(last - 1).equals("in")) {
            all.add(form.subList(0, last));
        }
        if (last > 0 && form.get(last).equals("in")) {
            List<String> into = new ArrayList<>(form);
            into.set(last, "into");
            all.add(into);
        }
        return all;
    }

    /** What is added first stands. */
    private void add(List<String> form, Sign sign) {
        if (!form.isEmpty()) {
            signs.putIfAbsent(form, sign);
            longest = Math.max(longest, form.size());
        }
    }
}
