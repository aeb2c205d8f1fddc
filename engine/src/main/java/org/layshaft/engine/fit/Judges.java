package org.layshaft.engine.fit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Has every check look at every meeting that the parts put in have a bearing on. */
final class Judges {
    private final FitChecks checks;

    Judges(FitChecks checks) {
        this.checks = checks;
    }

    /** Everything that is to be said, meeting by meeting. */
    List<Judgement> judge(Fitted before, Fitted now) {
        return concerned(now).stream()
                .flatMap(meeting -> checks.judge(meeting, before, now))
                .toList();
    }

    Optional<Judgement> firstFailing(Fitted before, Fitted now) {
        return concerned(now).stream()
                .filter(meeting -> checks.worst(meeting, before, now) == Outcome.FAILS)
                .flatMap(meeting -> checks.judge(meeting, before, now))
                .filter(Judgement::fails)
                .findFirst();
    }

    /** Whether the check of this judgement fails still. */
    boolean fails(Judgement failing, Fitted before, Fitted now) {
        return checks.judge(failing.meeting(), before, now)
                .filter(judgement -> judgement.check() == failing.check())
                .anyMatch(Judgement::fails);
    }

    /** The worst of all; it looks no further once something fails. Where no check says anything, nothing can be told. */
    Outcome worst(Fitted before, Fitted now) {
        Outcome worst = null;
        for (String place : now.putIn().keySet()) {
            for (Meeting meeting : now.places().meetingsAt(place)) {
                if (takesPlace(meeting, now)) {
                    Outcome outcome = checks.worst(meeting, before, now);
                    if (outcome == Outcome.FAILS) {
                        return outcome;
                    }
                    worst = outcome == null || worst == Outcome.UNTOLD ? worst : outcome;
                }
            }
        }
        return worst == null ? Outcome.UNTOLD : worst;
    }

    private static Set<Meeting> concerned(Fitted now) {
        Set<Meeting> concerned = new LinkedHashSet<>();
        now.putIn()
                .keySet()
                .forEach(place -> now.places().meetingsAt(place).stream()
                        .filter(meeting -> takesPlace(meeting, now))
                        .forEach(concerned::add));
        return concerned;
    }

    /** A gear that is in one with its shaft has no seat on it. */
    private static boolean takesPlace(Meeting meeting, Fitted now) {
        return meeting.kind() != MeetingKind.SEAT || now.hasOwnPart(meeting.one());
    }
}
