package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspect.Degree;
import org.layshaft.engine.symptom.Cell;
import org.layshaft.engine.symptom.Cells;
import org.layshaft.engine.symptom.Shown;
import org.layshaft.kb.failure.Commonness;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.Situation;

/** Tells of candidates and pairs what a person wants to know. */
final class Telling {
    private final Cells cells;
    private final Clues clues;
    private final Ranking ranking;
    private final ObservationWords words;
    private final Function<Fault, String> faultWords;

    Telling(Cells cells, Clues clues, Ranking ranking, ObservationWords words, Function<Fault, String> faultWords) {
        this.cells = cells;
        this.clues = clues;
        this.ranking = ranking;
        this.words = words;
        this.faultWords = faultWords;
    }

    Suspect candidate(Candidate candidate, int rank) {
        return suspect(
                rank,
                candidate.ways().stream()
                        .map(way -> List.of(way.entry().fault()))
                        .toList(),
                List.of(candidate.mode()),
                candidate.best().entry().shown(),
                candidate.assessment());
    }

    Suspect pair(Pair pair, int rank) {
        List<Fault> faults =
                List.of(pair.one().entry().fault(), pair.other().entry().fault());
        return suspect(rank, List.of(faults), pair.modes(), pair.shown(), pair.assessment());
    }

    private Suspect suspect(
            int rank, List<List<Fault>> ways, List<FailureMode> modes, Shown shown, Assessment assessment) {
        List<Fault> faults = shared(ways);
        boolean normal = modes.stream().allMatch(FailureMode::normal);
        String says = said(faults, normal);
        List<Suspect.Explained> explains = explains(assessment);
        List<Observation> unexplained = only(clues.seen(), assessment.explained(), 0);
        List<Observation> wrong = only(clues.notSeen(), assessment.denied(), Weights.WHOLE);
        List<Suspect.Sign> predicts = predicts(shown);
        return new Suspect(
                rank,
                faults,
                ways,
                says,
                assessment.shortfall(),
                normal,
                explains,
                unexplained,
                wrong,
                predicts,
                modes.stream()
                        .map(FailureMode::common)
                        .max(Commonness::compareTo)
                        .orElseThrow(),
                each(modes, mode -> Stream.of(mode.basis())),
                each(modes, mode -> Stream.of(mode.confirm())),
                modes.stream().map(FailureMode::seenAt).max(Depth::compareTo).orElseThrow(),
                each(modes, mode -> mode.cautions().stream()),
                each(modes, mode -> mode.leadsTo().stream()),
                each(modes, mode -> ranking.reasons(mode).stream()),
                new Account(words).of(says, normal, explains, unexplained, wrong, predicts));
    }

    private String said(List<Fault> faults, boolean normal) {
        String said = String.join(", and ", faults.stream().map(faultWords).toList());
        return normal ? "nothing is wrong: %s".formatted(said) : said;
    }

    /** Of each fault, what is told alike in every way. */
    private static List<Fault> shared(List<List<Fault>> ways) {
        List<Fault> shared = new ArrayList<>();
        for (int i = 0; i < ways.get(0).size(); i++) {
            Fault first = ways.get(0).get(i);
            Map<String, String> told = new TreeMap<>(first.told());
            for (List<Fault> way : ways) {
                told.entrySet().retainAll(way.get(i).told().entrySet());
            }
            shared.add(new Fault(first.part(), first.mode(), told));
        }
        return shared;
    }

    private List<Suspect.Explained> explains(Assessment assessment) {
        List<Suspect.Explained> explains = new ArrayList<>();
        for (Degree degree : Degree.values()) {
            List<Observation> some = new ArrayList<>();
            for (int i = 0; i < clues.seen().size(); i++) {
                if (assessment.explained()[i] > 0 && Weights.degree(assessment.explained()[i]) == degree) {
                    some.add(clues.seen().get(i).observation());
                }
            }
            byGears(some).forEach(observation -> explains.add(new Suspect.Explained(observation, degree)));
        }
        return explains;
    }

    private static List<Observation> only(List<Clue> clues, int[] values, int value) {
        List<Observation> some = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (values[i] == value) {
                some.add(clues.get(i).observation());
            }
        }
        return byGears(some);
    }

    /** Observations that differ by gear alone put together again. */
    private static List<Observation> byGears(List<Observation> singles) {
        Map<Observation, List<String>> gears = new LinkedHashMap<>();
        singles.forEach(single -> gears.computeIfAbsent(single.in(List.of()), any -> new ArrayList<>())
                .addAll(single.gears()));
        return gears.entrySet().stream()
                .map(entry -> entry.getKey().in(entry.getValue()))
                .toList();
    }

    private List<Suspect.Sign> predicts(Shown shown) {
        Map<List<Object>, List<String>> gears = new LinkedHashMap<>();
        BitSet unlooked = Assessment.unlooked(shown, clues);
        for (int number = unlooked.nextSetBit(0); number >= 0; number = unlooked.nextSetBit(number + 1)) {
            Cell cell = cells.cell(number);
            gears.computeIfAbsent(List.of(cells.notice(number), cell.situation()), any -> new ArrayList<>())
                    .add(cell.gear());
        }
        List<Suspect.Sign> signs = new ArrayList<>();
        gears.forEach((key, in) -> signs.add(sign((String) key.get(0), (Situation) key.get(1), in)));
        return signs;
    }

    private Suspect.Sign sign(String notice, Situation situation, List<String> gears) {
        return new Suspect.Sign(
                notice,
                situation,
                situation.isInGear() ? gears : List.of(),
                "%s: %s".formatted(words.when(situation, gears), words.says(notice)));
    }

    private static List<String> each(List<FailureMode> modes, Function<FailureMode, Stream<String>> of) {
        return modes.stream()
                .flatMap(of)
                .filter(text -> !text.isEmpty())
                .distinct()
                .toList();
    }
}
