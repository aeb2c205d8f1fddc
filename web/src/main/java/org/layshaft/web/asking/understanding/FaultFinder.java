package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.PartKind;

/** Finds the failures that a question speaks of: pairs each way of failing with the nearest part that can fail so. */
final class FaultFinder {
    private final Heard heard;
    private final BoxWords words;
    private final Set<String> wordsOfQuestions;
    private final Set<Integer> used = new TreeSet<>();
    private final Map<Place, List<Fault>> each = new TreeMap<>();
    private Optional<FaultsHeard.Problem> impossible = Optional.empty();

    /**
     * Where a failure is spoken of.
     *
     * @param from index of the first word of its part
     * @param part id of the part, where the words stand for both of two; else empty
     */
    private record Place(int from, String part) implements Comparable<Place> {
        @Override
        public int compareTo(Place other) {
            return from == other.from ? part.compareTo(other.part) : Integer.compare(from, other.from);
        }
    }

    /**
     * @param wordsOfQuestions words that need not speak of a failure though a mode is called so: {@code lost}
     */
    FaultFinder(Heard heard, Set<String> wordsOfQuestions) {
        this.heard = heard;
        this.words = heard.words();
        this.wordsOfQuestions = wordsOfQuestions;
    }

    FaultsHeard find() {
        Optional<FaultsHeard.Problem> problem = Optional.empty();
        for (FaultClue clue : clues()) {
            Narrowing.Narrowed narrowed = new Narrowing(heard, used).narrow(clue.parts(), clue.part(), clue.mode());
            if (narrowed.absent().isPresent() && problem.isEmpty()) {
                problem = Optional.of(
                        new FaultProblems(heard, used).absent(narrowed.absent().get(), clue));
            }
            if (Denial.of(heard, clue.mode()) && problem.isEmpty()) {
                problem = Optional.of(Denial.problem(words, clue));
            }
            add(new FaultClue(clue.mode(), clue.part(), narrowed.parts()));
            addOthersNamedWith(clue, narrowed.parts());
        }
        for (Mention mode : modesWithoutPart()) {
            if (problem.isEmpty()) {
                problem = Optional.of(new FaultProblems(heard, used).withoutPart(mode));
            }
        }
        return new FaultsHeard(List.copyOf(each.values()), Set.copyOf(used), problem.or(() -> impossible));
    }

    /** The nearest pairs, each mention in one pair only. */
    private List<FaultClue> clues() {
        List<FaultClue> possible = new ArrayList<>();
        for (Mention mode : heard.mentions()) {
            for (Mention part : heard.mentions()) {
                List<String> parts = failing(part, mode);
                if (!parts.isEmpty() && !part.equals(mode) && !(isOfQuestions(part) && isOfQuestions(mode))) {
                    possible.add(new FaultClue(mode, part, parts));
                }
            }
        }
        possible.sort(Comparator.comparingInt(this::distance));
        Set<Mention> taken = new HashSet<>();
        List<FaultClue> clues = new ArrayList<>();
        for (FaultClue clue : possible) {
            if (!taken.contains(clue.mode()) && !taken.contains(clue.part())) {
                taken.add(clue.mode());
                taken.add(clue.part());
                clues.add(clue);
            }
        }
        clues.sort(Comparator.comparingInt(FaultClue::from));
        clues.forEach(clue -> {
            use(clue.mode());
            use(clue.part());
        });
        return clues;
    }

    private int distance(FaultClue clue) {
        int general = clue.part().isGeneral() ? 1 : 0;
        return 4 * heard.distance(clue.mode(), clue.part()) + general;
    }

    private List<String> failing(Mention part, Mention mode) {
        return part.parts().stream()
                .filter(id -> mode.modes().stream().anyMatch(each -> each.canBefall(words.part(id))))
                .toList();
    }

    private void add(FaultClue clue) {
        if (isBoth(clue)) {
            clue.parts().forEach(part -> add(new FaultClue(clue.mode(), clue.part(), List.of(part)), part));
        } else {
            add(clue, "");
        }
    }

    /** Both of two parts, each with the same failure; the word is then taken up. */
    private boolean isBoth(FaultClue clue) {
        int before = clue.part().from() - 1;
        int at = heard.word(before).equals("of") ? before - 1 : before;
        boolean both = clue.parts().size() == 2 && heard.word(at).equals("both");
        if (both) {
            used.add(at);
        }
        return both;
    }

    private void add(FaultClue clue, String key) {
        Telling telling = new Telling(heard, used);
        List<Fault> choices = new ArrayList<>();
        for (String part : clue.parts()) {
            for (FailureMode mode : clue.mode().modes()) {
                if (mode.canBefall(words.part(part))) {
                    choices.addAll(telling.told(Fault.of(part, mode.name()), mode, clue));
                }
            }
        }
        List<Fault> fitting =
                choices.stream().filter(fault -> !telling.refuses(fault.part())).toList();
        if (fitting.isEmpty() && !choices.isEmpty() && impossible.isEmpty()) {
            impossible = Optional.of(new FaultProblems(heard, used)
                    .wrongSide(choices.get(0), telling.refusedGear().orElseThrow()));
        }
        each.put(
                new Place(clue.part().from(), key),
                (fitting.isEmpty() ? choices : fitting).stream().distinct().toList());
    }

    /** The second of "second and third blocking rings worn", the first of "1-2 and 3-4 forks bent". */
    private void addOthersNamedWith(FaultClue clue, List<String> narrowed) {
        int at = clue.part().from();
        while (heard.word(at - 1).equals("and")
                || heard.endingAt(at).filter(this::isUsed).isPresent()) {
            at = heard.word(at - 1).equals("and")
                    ? at - 1
                    : heard.endingAt(at).orElseThrow().from();
            Optional<Mention> other = heard.endingAt(at).filter(mention -> !isUsed(mention));
            if (other.isEmpty()) {
                continue;
            }
            List<String> parts = sameKind(other.get(), clue, narrowed);
            if (parts.isEmpty()) {
                return;
            }
            use(other.get());
            add(new FaultClue(clue.mode(), other.get(), parts));
            at = other.get().from();
        }
    }

    private List<String> sameKind(Mention other, FaultClue clue, List<String> narrowed) {
        List<String> direct = failing(other, clue.mode());
        boolean onlyNumber = other.gear().isPresent() && other.to() - other.from() == 1;
        List<String> alike = direct.isEmpty() || onlyNumber ? alike(other, narrowed) : List.of();
        return alike.isEmpty() ? direct : alike;
    }

    private List<String> alike(Mention other, List<String> narrowed) {
        PartKind kind = words.part(narrowed.get(0)).kind();
        return words.layout().parts().values().stream()
                .filter(part -> part.kind() == kind && words.belongings().belongs(part.id(), other))
                .map(part -> part.id())
                .toList();
    }

    private List<Mention> modesWithoutPart() {
        return heard.mentions().stream()
                .filter(mention -> !mention.modes().isEmpty() && !isUsed(mention))
                .filter(mention -> heard.tokens().subList(mention.from(), mention.to()).stream()
                                .noneMatch(token -> wordsOfQuestions.contains(token.text()))
                        || heard.mentions().stream().anyMatch(other -> isElsewhere(other) && other.gapTo(mention) < 3))
                .toList();
    }

    private static boolean isElsewhere(Mention mention) {
        return mention.one(Meaning.Elsewhere.class).isPresent();
    }

    /** Whether every word is one that questions are made of: the "in two gears" of two gears at once. */
    private boolean isOfQuestions(Mention mention) {
        return heard.tokens().subList(mention.from(), mention.to()).stream()
                .allMatch(token -> wordsOfQuestions.contains(token.text()) || Heard.LINKS.contains(token.text()));
    }

    private boolean isUsed(Mention mention) {
        return used.contains(mention.from());
    }

    private void use(Mention mention) {
        for (int at = mention.from(); at < mention.to(); at++) {
            used.add(at);
        }
    }
}
