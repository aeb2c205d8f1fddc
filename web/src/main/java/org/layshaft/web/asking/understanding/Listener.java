package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.FaultUnderstanding;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Restating;
import org.layshaft.web.asking.SymptomsHeard;
import org.layshaft.web.asking.Understanding;

/** Understands questions about one box. Thread-safe. */
public final class Listener {
    /** A fit worse than this is none. */
    private static final double GOOD_ENOUGH = 0.45;

    /** The same where words were typed that nothing is known of. */
    private static final double GOOD_ENOUGH_WITH_UNKNOWN = 0.62;

    /** A fit better than this is worth offering though it is not good enough. */
    private static final double LIKELY = 0.3;

    /** What is asked besides, between commas, and tells nothing that is noticed: {@code can I just drive it}. */
    private static final Pattern ASIDE_QUESTION = Pattern.compile(
            "(^|[,;:.?!])\\s*(?:so |and )?(?:can|could|should|may|how|what|which|is it|is reverse|is that|do i|would)\\b[^,;:.?!]*",
            Pattern.CASE_INSENSITIVE);

    /** So many of the words may be unknown where it is told what is noticed. */
    private static final double MOST_UNKNOWN = 0.34;

    private static final int MOST_OFFERS = 5;

    /** Fits closer than this are as good as each other. */
    private static final double AS_GOOD = 0.02;

    /** So much of a question at large being used, nothing else is asked. */
    private static final double SURE = 0.8;

    /** So much being used, it is that, if nothing else is. */
    private static final double LIKELY_AT_LARGE = 0.55;

    /** Fits this much worse than the best are still worth offering. */
    private static final double WORTH_OFFERING = 0.15;

    private final BoxWords words;
    private final SymptomListener symptoms;
    private final Phrases phrases;
    private final Spelling spelling;
    private final Readings readings;
    private final Restating restating;
    private final Suggestions suggestions;
    private final OpenListener open;

    Listener(BoxWords words, Phrases phrases, SymptomListener symptoms, OpenListener open, Set<String> wordsAtLarge) {
        this.open = open;
        this.words = words;
        this.symptoms = symptoms;
        this.phrases = phrases;
        this.readings = new Readings(words);
        this.restating = new Restating(words.knowledge(), words.box());
        this.suggestions = new Suggestions(words, phrases);
        Set<String> known = new HashSet<>(words.lexicon().words());
        known.addAll(phrases.words());
        known.addAll(Heard.LINKS);
        known.addAll(Denial.DENYING);
        known.addAll(wordsAtLarge);
        phrases.asides().forEach(known::addAll);
        this.spelling = new Spelling(known, phrases.words());
    }

    /** What these words ask of this box. */
    public Understanding understand(String typed) {
        Optional<OpenListener.Found> atLarge = open.hear(typed, this::hear)
                .filter(found ->
                        !found.fit().phrase().intent().equals(Intent.DEFINE.word()) || !namesNoSuchGear(typed));
        if (atLarge.filter(found -> found.score() >= SURE).isPresent()) {
            return atLarge(atLarge.get(), typed);
        }
        SymptomsHeard noticed = symptoms.hear(typed);
        if (noticed.isWhole() && speaksOfNoFailure(typed)) {
            return suspects(noticed);
        }
        Understanding understanding = understandQuestion(typed);
        if (!(understanding instanceof Understanding.NotUnderstood)) {
            return understanding;
        }
        return atLarge.filter(found -> found.score() >= LIKELY_AT_LARGE)
                .map(found -> atLarge(found, typed))
                .or(() -> partly(typed))
                .orElse(understanding);
    }

    /** What is noticed, though some words of it are not known: those are told, and left aside. */
    private Optional<Understanding> partly(String whole) {
        String typed = ASIDE_QUESTION.matcher(whole).replaceAll("$1");
        SymptomsHeard noticed = symptoms.hear(typed);
        boolean enough =
                noticed.unknown().size() <= MOST_UNKNOWN * Tokens.of(typed).size();
        boolean placed = noticed.evidence()
                .seen()
                .anyMatch(seen -> !seen.gears().isEmpty() || seen.situation().isPresent());
        return enough && placed
                ? Optional.of(new Understanding.Understood(
                        reading(
                                new Question.Suspects(words.layout().id(), List.of(), noticed.evidence()),
                                noticed.unknown().isEmpty()
                                        ? ""
                                        : "; not understood and left aside: " + quoted(noticed.unknown())),
                        List.of()))
                : Optional.empty();
    }

    /** Whoever names a gear that this box has not does not ask what a gear is. */
    private boolean namesNoSuchGear(String typed) {
        return hear(typed).mentions().stream()
                .anyMatch(mention -> mention.one(Meaning.NoSuchGear.class).isPresent());
    }

    private boolean speaksOfNoFailure(String typed) {
        FaultsHeard faults = faults(hear(typed));
        return faults.each().isEmpty() || faults.problem().isPresent();
    }

    /** What these words ask at large, if that takes up most of them. */
    public Optional<Understanding> understandAtLarge(String typed, Intent intent) {
        return open.hear(typed, this::hear)
                .filter(found -> found.score() >= LIKELY_AT_LARGE)
                .filter(found -> found.fit().phrase().intent().equals(intent.word()))
                .map(found -> atLarge(found, typed));
    }

    private Understanding atLarge(OpenListener.Found found, String typed) {
        if (found.isDeclined()) {
            return new Understanding.Declined(
                    found.fit().phrase().name(),
                    String.join(" ", found.fit().phrase().says()),
                    suggestions.nearest(hear(typed).tokens()));
        }
        List<Understanding.Reading> all = readings(found.questions(), "");
        return all.size() == 1
                ? new Understanding.Understood(all.get(0), readings(found.others(), ""))
                : new Understanding.Ambiguous(
                        "That may be one of %d questions about %s."
                                .formatted(all.size(), words.layout().name()),
                        all.stream().limit(MOST_OFFERS).toList());
    }

    /** What these words say is noticed of this box. */
    public SymptomsHeard understandSymptoms(String typed) {
        return symptoms.hear(typed);
    }

    private Understanding suspects(SymptomsHeard noticed) {
        Question question = new Question.Suspects(words.layout().id(), List.of(), noticed.evidence());
        return new Understanding.Understood(reading(question, ""), List.of());
    }

    private Understanding understandQuestion(String typed) {
        Heard heard = hear(typed);
        if (heard.tokens().isEmpty()) {
            return new Understanding.NotUnderstood("Nothing was asked.", suggestions.nearest(List.of()));
        }
        FaultsHeard faults = faults(heard);
        Rest rest = Rest.of(heard, faults, phrases.words());
        List<Fit> fits = phrases.fits(rest);
        if (faults.problem().isPresent()) {
            return cannotStand(heard, faults.problem().get(), fits);
        }
        return Absence.in(heard, faults)
                .<Understanding>map(says -> new Understanding.NotUnderstood(says, suggestions.nearest(heard.tokens())))
                .orElseGet(() -> choose(heard, faults, rest, fits));
    }

    /** What these words mention, to be put into another question. */
    public Mentioned mentioned(String typed, Set<List<String>> leadIns) {
        Measures measures = Measures.in(typed);
        Heard heard = hear(measures.text());
        return Mentioned.in(
                heard,
                measures,
                open.terms(heard),
                word -> open.isAside(word) || leadIns.stream().anyMatch(run -> run.contains(word)));
    }

    /** A question of this box in our words. */
    public String restated(Question question) {
        return restating.said(question);
    }

    /** Every question that is offered for completion. */
    public Set<String> offered() {
        return suggestions.all();
    }

    /** The layouts that these words name. */
    public List<String> layoutsNamed(String typed) {
        return hear(typed).mentions().stream()
                .flatMap(mention -> mention.all(Meaning.OfLayout.class))
                .map(Meaning.OfLayout::id)
                .distinct()
                .toList();
    }

    /** What these words say is wrong with this box, and nothing else. */
    public FaultUnderstanding understandFaults(String typed) {
        return new FaultListener(words, this).understand(typed);
    }

    /** What failures these words speak of. */
    FaultsHeard faults(Heard heard) {
        return new FaultFinder(heard, phrases.words()).find();
    }

    Heard hear(String typed) {
        List<Token> tokens = Tokens.of(TurnsOfSpeech.plain(typed)).stream()
                .map(token -> token.spelt(spelling.mend(token.text())))
                .toList();
        return Heard.of(words, tokens);
    }

    /** Words beside those of the failures that nothing is known of. */
    List<String> unknownBeside(Heard heard, FaultsHeard faults) {
        return UnknownWords.in(Rest.of(heard, faults, phrases.words()), phrases);
    }

    private Understanding cannotStand(Heard heard, FaultsHeard.Problem problem, List<Fit> fits) {
        Fit asked = fits.get(0);
        Intent intent = asked.score() >= GOOD_ENOUGH ? asked.intent() : Intent.WHAT_HAPPENS;
        List<String> gears = asked.gears().stream()
                .flatMap(mention -> mention.gear().stream())
                .toList();
        List<String> offers = problem.offers().stream()
                .flatMap(fault -> readings.of(intent, List.of(fault), gears, List.of()).stream())
                .map(restating::said)
                .distinct()
                .toList();
        return new Understanding.NotUnderstood(
                problem.says(), offers.isEmpty() ? suggestions.nearest(heard.tokens()) : offers);
    }

    private Understanding choose(Heard heard, FaultsHeard faults, Rest rest, List<Fit> fits) {
        List<String> unknown = new ArrayList<>(UnknownWords.in(rest, phrases));
        fits.stream().limit(1).forEach(fit -> unknown.addAll(fit.partsThatMatter(rest)));
        double needed = unknown.isEmpty() ? GOOD_ENOUGH : GOOD_ENOUGH_WITH_UNKNOWN;
        double best = fits.isEmpty() ? 0 : fits.get(0).score();
        if (best < needed) {
            return notUnderstood(heard, unknown, likely(fits, faults));
        }
        List<Question> equal = new ArrayList<>();
        List<Question> others = new ArrayList<>();
        for (Fit fit : fits) {
            if (fit.score() >= best - AS_GOOD) {
                equal.addAll(readings.of(fit, faults.together()));
            } else if (fit.score() >= Math.max(GOOD_ENOUGH, best - WORTH_OFFERING)) {
                others.addAll(readings.of(fit, faults.together()));
            }
        }
        String aside = unknown.isEmpty() ? "" : "; not understood and left aside: " + quoted(unknown);
        if (equal.size() == 1) {
            return new Understanding.Understood(reading(equal.get(0), aside), readings(others, ""));
        } else if (equal.isEmpty()) {
            return new Understanding.NotUnderstood(
                    "It does not say which part is meant.", suggestions.nearest(heard.tokens()));
        }
        return new Understanding.Ambiguous(
                "That may be one of %d questions about %s."
                        .formatted(equal.size(), words.layout().name()),
                readings(equal, aside));
    }

    /** What would be understood if the words that are not known were not there. */
    private List<String> likely(List<Fit> fits, FaultsHeard faults) {
        return fits.stream()
                .limit(1)
                .filter(fit -> fit.score() >= LIKELY)
                .flatMap(fit -> readings.of(fit, faults.together()).stream())
                .map(restating::said)
                .toList();
    }

    private Understanding notUnderstood(Heard heard, List<String> unknown, List<String> likely) {
        String says = unknown.isEmpty()
                ? "I did not understand what is asked."
                : "I did not understand what to make of %s.".formatted(quoted(unknown));
        List<String> nearest = Stream.concat(likely.stream(), suggestions.nearest(heard.tokens()).stream())
                .distinct()
                .limit(MOST_OFFERS)
                .toList();
        return new Understanding.NotUnderstood(says, nearest);
    }

    private List<Understanding.Reading> readings(List<Question> questions, String aside) {
        return questions.stream().map(question -> reading(question, aside)).toList();
    }

    private Understanding.Reading reading(Question question, String aside) {
        return new Understanding.Reading(question, restating.said(question) + aside);
    }

    private static String quoted(List<String> words) {
        return Names.joined(words.stream().map(word -> "“" + word + "”").toList());
    }
}
