package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Verdict;
import org.layshaft.kb.failure.Fault;
import org.layshaft.web.asking.Saying;

/** What becomes of the gears, what is noticed, and which gears can now meet. */
final class WhatHappensComposer {
    private static final int MOST_REASONS = 3;
    private static final int MOST_NOTICES = 8;

    private final Facts facts;

    WhatHappensComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose() {
        Standing standing = new Standing(facts);
        List<String> says = new ArrayList<>(standing.of(facts.whatIf().gears()));
        says.addAll(standing.ofNeutral());
        facts.whatIf().gears().stream()
                .filter(gear -> gear.verdict() == Verdict.LOST || gear.verdict() == Verdict.LOCKS)
                .flatMap(gear -> new Because(facts).of(gear.possibilities().get(0)).stream())
                .distinct()
                .limit(MOST_REASONS)
                .forEach(says::add);
        List<String> noticed = new Noticing(facts).in(facts.whatIf().gears(), true);
        noticed.stream().limit(MOST_NOTICES).forEach(says::add);
        if (noticed.size() > MOST_NOTICES) {
            says.add("More that may be noticed stands by the gears.");
        }
        List<Conflict> meeting =
                facts.whatIf().conflicts().stream().filter(Conflict::canMeet).toList();
        says.addAll(meeting(meeting));
        List<String> parts =
                facts.whatIf().faults().stream().map(Fault::part).distinct().toList();
        return Composed.of(says).aboutParts(parts).aboutPairs(facts.isSound() ? List.of() : meeting);
    }

    private static List<String> meeting(List<Conflict> meeting) {
        List<String> locking = meeting.stream()
                .filter(pair -> pair.outcome() == Motion.Outcome.LOCKED)
                .map(pair -> Saying.gears(pair.gears()))
                .toList();
        return locking.isEmpty()
                ? List.of()
                : List.of(
                        "Two gears can be engaged at once and lock the box: %s.".formatted(String.join("; ", locking)));
    }
}
