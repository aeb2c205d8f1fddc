package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.PartSet;

/**
 * Finds the fewest further units that let a set serve. One check that fails can only be cured by another part at one of
 * the places that have a bearing on it, so the search branches on those alone; it goes one unit deeper only when there is
 * no answer with fewer, and so what it finds is the smallest.
 */
final class CompanionSearch {
    /** Further units beyond which it is another box. */
    static final int MOST_UNITS = 3;

    /** How many equally small answers are kept. */
    private static final int MOST_ANSWERS = 5;

    private final Judges judges;
    private final Placements placements;
    private final Catalogue catalogue;
    private final Fitted before;
    private final Set<Set<String>> seen = new HashSet<>();
    private final List<Companions> answers = new ArrayList<>();

    private CompanionSearch(Judges judges, Placements placements, Catalogue catalogue, Fitted before) {
        this.judges = judges;
        this.placements = placements;
        this.catalogue = catalogue;
        this.before = before;
    }

    /** All of the smallest, fewest parts first; none where nothing in the catalogue helps. */
    static List<Companions> of(
            Judges judges, Placements placements, Catalogue catalogue, Fitted before, Placement asked, int mostUnits) {
        CompanionSearch search = new CompanionSearch(judges, placements, catalogue, before);
        for (int units = 1; units <= mostUnits && search.answers.stream().noneMatch(Companions::told); units++) {
            search.seen.clear();
            search.search(before.with(asked.parts()), asked, List.of(), List.of(), units);
        }
        boolean anyTold = search.answers.stream().anyMatch(Companions::told);
        return search.answers.stream()
                .filter(answer -> answer.told() || !anyTold)
                .sorted((one, other) ->
                        Integer.compare(one.parts().size(), other.parts().size()))
                .limit(MOST_ANSWERS)
                .toList();
    }

    private void search(Fitted now, Placement asked, List<PartSet> units, List<Judgement> cures, int left) {
        if (answers.size() >= MOST_ANSWERS * 2) {
            return;
        }
        Optional<Judgement> failing = judges.firstFailing(before, now);
        if (failing.isEmpty()) {
            answer(now, asked, units, cures);
            return;
        }
        if (left == 0) {
            return;
        }
        candidates(failing.get().meeting(), now).forEach(next -> {
            Fitted with = now.with(next.parts());
            List<PartSet> more = append(units, next.set());
            if (seen.add(placed(with)) && !judges.fails(failing.get(), before, with)) {
                search(with, asked, more, append(cures, failing.get()), left - 1);
            }
        });
    }

    /** Placements of what can be ordered that put another part where this meeting may be cured, and leave what was put in. */
    private Stream<Placement> candidates(Meeting meeting, Fitted now) {
        if (meeting.kind() == MeetingKind.TOGETHER) {
            String place = meeting.one();
            String number = now.ownPartAt(place).number();
            return now.together().wholeSets(number).stream()
                    .flatMap(set -> placements.of(set, catalogue).stream())
                    .filter(placement -> placement.parts().containsKey(place))
                    .filter(placement -> leavesWhatWasPutIn(placement, now));
        }
        return now.places().involved(meeting).stream()
                .filter(place -> !now.putIn().containsKey(place))
                .flatMap(place -> kindsAt(place, now)
                        .flatMap(kind -> now.together().units(kind).stream())
                        .flatMap(unit -> placements.of(unit, catalogue).stream())
                        .filter(placement -> isAnother(placement.parts().get(place), now.ownPartAt(place))))
                .filter(placement -> leavesWhatWasPutIn(placement, now))
                .distinct();
    }

    private static Stream<ComponentKind> kindsAt(String place, Fitted now) {
        return Stream.of(ComponentKind.values())
                .filter(kind -> now.layout().parts().containsKey(place)
                        ? kind.canStandAt(now.layout().parts().get(place).kind())
                        : kind == ComponentKind.SPEED_GEAR);
    }

    private static boolean isAnother(CataloguePart part, CataloguePart there) {
        return part != null && (there == null || !part.number().equals(there.number()));
    }

    private static boolean leavesWhatWasPutIn(Placement placement, Fitted now) {
        return placement.parts().entrySet().stream().allMatch(entry -> {
            CataloguePart put = now.putIn().get(entry.getKey());
            return put == null || put.number().equals(entry.getValue().number());
        });
    }

    private void answer(Fitted now, Placement asked, List<PartSet> units, List<Judgement> cures) {
        Map<String, CataloguePart> further = new LinkedHashMap<>(now.putIn());
        further.keySet().removeAll(asked.parts().keySet());
        answers.add(new Companions(units, further, cures, judges.worst(before, now) == Outcome.HOLDS));
    }

    private static Set<String> placed(Fitted now) {
        Set<String> placed = new HashSet<>();
        now.putIn().forEach((place, part) -> placed.add(place + "=" + part.number()));
        return placed;
    }

    private static <T> List<T> append(List<T> list, T last) {
        return Stream.concat(list.stream(), Stream.of(last)).toList();
    }
}
