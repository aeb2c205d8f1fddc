package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Has every check look at every meeting that the parts put in have a bearing on. */
final class Judges {
    private final FitChecks checks;

    Judges(FitChecks checks) {
        this.checks = checks;
    }

    /** Everything that is to be said, meeting by meeting. */
    List<Judgement> judge(Fitted before, Fitted now) {
        Set<Meeting> concerned = new LinkedHashSet<>();
        now.putIn()
                .keySet()
                .forEach(place -> now.places().meetingsAt(place).stream()
                        .filter(meeting -> takesPlace(meeting, now))
                        .forEach(concerned::add));
        return concerned.stream()
                .flatMap(meeting -> checks.judge(meeting, before, now))
                .toList();
    }

    /** The places of what was put in that none of these judgements is about. */
    static Set<String> unlookedAt(Fitted now, List<Judgement> judgements) {
        Set<String> unlookedAt = new HashSet<>(now.putIn().keySet());
        judgements.stream()
                .filter(judgement -> looksAtParts(judgement.meeting()))
                .forEach(judgement -> unlookedAt.removeAll(now.places().involved(judgement.meeting())));
        return unlookedAt;
    }

    /** The first check that fails at each meeting where one does. */
    List<Unfit> unfits(Fitted before, Fitted now) {
        Set<Meeting> concerned = new LinkedHashSet<>();
        now.putIn().keySet().forEach(place -> concerned.addAll(now.places().meetingsAt(place)));
        List<Unfit> unfits = new ArrayList<>();
        for (Meeting meeting : concerned) {
            FitCheck failing = takesPlace(meeting, now) ? checks.firstFailing(meeting, before, now) : null;
            if (failing != null) {
                unfits.add(new Unfit(failing, meeting, before, now));
            }
        }
        return unfits;
    }

    /** The worst of all; it looks no further once something fails. What no check looks at cannot be told. */
    Outcome worst(Fitted before, Fitted now) {
        Outcome worst = Outcome.HOLDS;
        for (String place : now.putIn().keySet()) {
            boolean looked = false;
            for (Meeting meeting : now.places().meetingsAt(place)) {
                if (takesPlace(meeting, now)) {
                    Outcome outcome = checks.worst(meeting, before, now);
                    if (outcome == Outcome.FAILS) {
                        return outcome;
                    }
                    looked |= outcome != null && looksAtParts(meeting);
                    worst = outcome == Outcome.UNTOLD ? outcome : worst;
                }
            }
            worst = looked ? worst : Outcome.UNTOLD;
        }
        return worst;
    }

    /** That a part comes with others says nothing of the part. */
    private static boolean looksAtParts(Meeting meeting) {
        return meeting.kind() != MeetingKind.TOGETHER;
    }

    /** A gear that is in one with its shaft has no seat on it. */
    private static boolean takesPlace(Meeting meeting, Fitted now) {
        return meeting.kind() != MeetingKind.SEAT || now.hasOwnPart(meeting.one());
    }
}
