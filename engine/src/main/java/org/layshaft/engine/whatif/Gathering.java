package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.NeutralVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.Situation;

/** Gathers the possibilities into one answer: what holds in all of them, and what depends on which of them is so. */
final class Gathering {
    private static final List<String> SITUATIONS =
            Stream.of(Situation.values()).map(Situation::word).toList();
    private static final Set<Verdict> DRIVING = EnumSet.of(Verdict.WORKS, Verdict.WORKS_WITH_NOTICE);

    private final List<World> worlds;
    private final List<Fault> told;
    private final Names names;

    /**
     * @param told the faults as told, before anything was supposed of them
     */
    Gathering(List<World> worlds, List<Fault> told, Names names) {
        this.worlds = worlds;
        this.told = told;
        this.names = names;
    }

    GearVerdict gear(Box.DerivedGear gear) {
        List<Possibility> possibilities =
                worlds.stream().map(world -> world.possibility(gear.name())).toList();
        World first = worlds.get(0);
        return new GearVerdict(
                gear.name(),
                verdict(possibilities),
                gear.direction(),
                gear.ratio(),
                commonPath(gear.name()),
                notices(gear.name(), possibilities),
                because(Names.gearName(gear.name()), possibilities),
                differing(Names.gearName(gear.name()), possibilities),
                first.run().stance(gear.name()),
                first.run().motion(gear.name()));
    }

    NeutralVerdict neutral() {
        List<Possibility> possibilities = worlds.stream().map(World::neutral).toList();
        World first = worlds.get(0);
        return new NeutralVerdict(
                first.hasNeutral(),
                verdict(possibilities),
                notices(Run.NEUTRAL, possibilities),
                because(Run.NEUTRAL, possibilities),
                differing(Run.NEUTRAL, possibilities),
                first.run().stance(Run.NEUTRAL),
                first.run().standing());
    }

    /** Pairs that can meet in any possibility can meet: that is what a person must reckon with. */
    List<Conflict> conflicts() {
        List<List<Conflict>> byWorld = worlds.stream().map(World::conflicts).toList();
        List<Conflict> gathered = new ArrayList<>();
        for (int i = 0; i < byWorld.get(0).size(); i++) {
            int pair = i;
            Stream<Conflict> ways = byWorld.stream().map(conflicts -> conflicts.get(pair));
            gathered.add(ways.filter(Conflict::canMeet)
                    .findFirst()
                    .orElse(byWorld.get(0).get(pair)));
        }
        return gathered;
    }

    /** The possibilities where it matters which of them is so; otherwise one, in which nothing is supposed. */
    private List<Possibility> differing(String gear, List<Possibility> possibilities) {
        boolean differ = possibilities.stream()
                        .map(possibility -> List.of(possibility.verdict(), says(possibility)))
                        .distinct()
                        .count()
                > 1;
        Possibility any = possibilities.get(0);
        return differ
                ? possibilities
                : List.of(new Possibility(told, "", any.verdict(), any.notices(), because(gear, possibilities)));
    }

    private static List<String> says(Possibility possibility) {
        return possibility.notices().stream().map(Notice::says).toList();
    }

    /** Uncertain only where one possibility drives and another does not, or one locks: not where just a notice is. */
    private static Verdict verdict(List<Possibility> possibilities) {
        Set<Verdict> verdicts = possibilities.stream()
                .map(Possibility::verdict)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Verdict.class)));
        if (verdicts.size() == 1) {
            return verdicts.iterator().next();
        }
        return DRIVING.containsAll(verdicts) ? Verdict.WORKS_WITH_NOTICE : Verdict.UNCERTAIN;
    }

    private List<PathStep> commonPath(String gear) {
        List<List<PathStep>> paths =
                worlds.stream().map(world -> world.path(gear)).distinct().toList();
        return paths.size() == 1 ? paths.get(0) : List.of();
    }

    /** Those noticed in every possibility as they are; the others as what may be noticed. */
    private List<Notice> notices(String at, List<Possibility> possibilities) {
        List<Notice> gathered = new ArrayList<>();
        possibilities.stream()
                .flatMap(possibility -> possibility.notices().stream())
                .forEach(notice -> {
                    boolean known = gathered.stream().anyMatch(other -> isSame(other, notice));
                    if (!known) {
                        boolean inAll = possibilities.stream()
                                .allMatch(possibility -> possibility.notices().stream()
                                        .anyMatch(other -> other.certain() && isSame(other, notice)));
                        gathered.add(inAll ? notice : perhaps(at, notice));
                    }
                });
        gathered.sort(Comparator.comparing(notice -> SITUATIONS.indexOf(notice.condition())));
        return gathered;
    }

    private static boolean isSame(Notice one, Notice other) {
        return one.notice().equals(other.notice())
                && one.condition().equals(other.condition())
                && one.heat().equals(other.heat());
    }

    private Notice perhaps(String at, Notice notice) {
        String says = names.perhapsNoticed(notice.notice(), notice.condition(), notice.heat(), at);
        return new Notice(notice.notice(), notice.condition(), notice.heat(), says, false, notice.because());
    }

    private static List<Reason> because(String gear, List<Possibility> possibilities) {
        List<List<Reason>> ways =
                possibilities.stream().map(Possibility::because).distinct().toList();
        if (ways.size() == 1) {
            return ways.get(0);
        }
        Function<Possibility, Reason> way = possibility -> new Reason(
                "",
                "if %s: %s".formatted(possibility.says(), possibility.verdict().says()),
                possibility.because());
        boolean depends = verdict(possibilities) == Verdict.UNCERTAIN;
        String says = depends
                ? "what becomes of %s depends on what is not known of the fault".formatted(gear)
                : "%s %s, whichever of these is so"
                        .formatted(gear, verdict(possibilities).says());
        return List.of(new Reason(
                "verdict/depends", says, possibilities.stream().map(way).toList()));
    }
}
