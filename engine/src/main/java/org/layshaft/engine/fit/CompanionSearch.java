package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/**
 * Finds the fewest further units that let a set serve. One check that fails can only be cured by another part at one of
 * the places that have a bearing on it, so the search branches on those alone, at the check with the fewest parts to choose
 * from; it goes one unit deeper only when there is no answer with fewer, and so what it finds is the smallest.
 */
final class CompanionSearch {
    /** Further units beyond which it is another box. */
    static final int MOST_UNITS = 3;

    /** How many equally small answers are kept. */
    private static final int MOST_ANSWERS = 5;

    private final SearchedBox box;
    private final Shelf shelf;
    private final Placement asked;
    /** What stood there, and how many more units could still be put in then. */
    private final Map<Map<String, String>, Integer> seen = new HashMap<>();

    private final List<Companions> answers = new ArrayList<>();

    private CompanionSearch(SearchedBox box, Shelf shelf, Placement asked) {
        this.box = box;
        this.shelf = shelf;
        this.asked = asked;
    }

    /**
     * All of the smallest, fewest parts first; none where nothing in the catalogue helps. Where everything can be told
     * with none of them, those with which something cannot.
     */
    static List<Companions> of(Judges judges, Shelf shelf, Fitted before, Placement asked, int mostUnits) {
        CompanionSearch search = new CompanionSearch(new SearchedBox(judges, before), shelf, asked);
        for (int units = 1; units <= mostUnits && search.answers.stream().noneMatch(Companions::told); units++) {
            search.seen.clear();
            search.search(before.with(asked.parts()), List.of(), List.of(), units);
        }
        boolean anyTold = search.answers.stream().anyMatch(Companions::told);
        return search.answers.stream()
                .filter(answer -> answer.told() || !anyTold)
                .sorted(Comparator.comparing(answer -> answer.parts().size()))
                .limit(MOST_ANSWERS)
                .toList();
    }

    private void search(Fitted now, List<PartSet> units, List<Unfit> cured, int left) {
        if (answers.stream().filter(Companions::told).count() >= MOST_ANSWERS) {
            return;
        }
        List<Unfit> unfits = box.unfits(now);
        if (unfits.isEmpty()) {
            answer(now, units, cured);
        } else if (left > 0) {
            Unfit hardest = hardest(unfits, now);
            candidates(hardest.meeting(), now).forEach(next -> {
                Fitted then = now.with(next.parts());
                if (box.isCured(hardest, then) && mayBeCuredBy(then, unfits, left) && isNews(then, left - 1)) {
                    search(then, append(units, next.set()), append(cured, hardest), left - 1);
                }
            });
        }
    }

    /** The one with the fewest parts to choose from: whatever is chosen in the end, it must be cured. */
    private Unfit hardest(List<Unfit> unfits, Fitted now) {
        return unfits.size() == 1
                ? unfits.get(0)
                : Collections.min(unfits, Comparator.comparing(unfit -> choice(unfit.meeting(), now)));
    }

    private int choice(Meeting meeting, Fitted now) {
        if (meeting.kind() == MeetingKind.TOGETHER) {
            return 1;
        }
        int choice = 0;
        for (String place : now.places().involved(meeting)) {
            choice += now.putIn().containsKey(place) ? 0 : shelf.at(place).size();
        }
        return choice;
    }

    /** The last unit must cure everything. */
    private boolean mayBeCuredBy(Fitted then, List<Unfit> unfits, int left) {
        return left > 1 || unfits.stream().allMatch(unfit -> box.isCured(unfit, then));
    }

    /** A whole set may be reached by one of its parts first, with a unit less to go. */
    private boolean isNews(Fitted then, int left) {
        Map<String, String> numbers = numbers(then);
        boolean news = seen.getOrDefault(numbers, -1) < left;
        if (news) {
            seen.put(numbers, left);
        }
        return news;
    }

    /** What can be ordered that puts another part where this meeting may be cured, and leaves what was put in. */
    private Stream<Placement> candidates(Meeting meeting, Fitted now) {
        Stream<Placement> candidates = meeting.kind() == MeetingKind.TOGETHER
                ? shelf.wholeSets(now.ownPartAt(meeting.one()), meeting.one())
                : now.places().involved(meeting).stream()
                        .filter(place -> !now.putIn().containsKey(place))
                        .flatMap(place -> shelf.at(place).stream()
                                .filter(placement -> isAnother(placement.parts().get(place), now.ownPartAt(place))));
        return candidates.filter(placement -> leavesWhatWasPutIn(placement, now));
    }

    private static boolean isAnother(CataloguePart part, CataloguePart there) {
        return there == null || !part.number().equals(there.number());
    }

    private static boolean leavesWhatWasPutIn(Placement placement, Fitted now) {
        for (Map.Entry<String, CataloguePart> entry : placement.parts().entrySet()) {
            CataloguePart put = now.putIn().get(entry.getKey());
            if (put != null && !put.number().equals(entry.getValue().number())) {
                return false;
            }
        }
        return true;
    }

    private void answer(Fitted now, List<PartSet> units, List<Unfit> cured) {
        Map<String, CataloguePart> further = new LinkedHashMap<>(now.putIn());
        further.keySet().removeAll(asked.parts().keySet());
        answers.add(new Companions(
                units, further, cured.stream().map(Unfit::judgement).toList(), box.isTold(now)));
    }

    private static Map<String, String> numbers(Fitted now) {
        Map<String, String> numbers = new LinkedHashMap<>();
        now.putIn().forEach((place, part) -> numbers.put(place, part.number()));
        return numbers;
    }

    private static <T> List<T> append(List<T> list, T last) {
        return Stream.concat(list.stream(), Stream.of(last)).toList();
    }
}
