package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Has every check look at every meeting that the parts put in have a bearing on. */
final class Judges {
    private final FitChecks checks;

    Judges(FitChecks checks) {
        this.checks = checks;
    }

    /** Everything that is to be said, meeting by meeting. */
    List<Judgement> judge(Fitted before, Fitted now) {
        return concerned(now).stream()
                .filter(meeting -> takesPlace(meeting, now))
                .flatMap(meeting -> checks.judge(meeting, before, now).stream())
                .toList();
    }

    /** The places of what was put in that none of these judgements is about. */
    static Set<String> unlookedAt(Fitted now, List<Judgement> judgements) {
        return unlookedAt(now, judgements.stream().map(Judgement::meeting));
    }

    private static Set<String> unlookedAt(Fitted now, Stream<Meeting> lookedAt) {
        Set<String> unlookedAt = new HashSet<>(now.putIn().keySet());
        lookedAt.filter(Judges::looksAtParts)
                .forEach(meeting -> now.places().involved(meeting).forEach(unlookedAt::remove));
        return unlookedAt;
    }

    /** What the checks say of one meeting, where only outcomes count. */
    CheckedMeeting check(Meeting meeting, Fitted before, Fitted now) {
        return checks.check(meeting, before, now);
    }

    /** The worst of all; it looks no further once something fails. What no check looks at cannot be told. */
    Outcome worst(Fitted before, Fitted now) {
        return worst(now, meeting -> check(meeting, before, now));
    }

    /** The same, going by what is said of each meeting. */
    static Outcome worst(Fitted now, Function<Meeting, CheckedMeeting> checked) {
        Outcome worst = Outcome.HOLDS;
        List<Meeting> lookedAt = new ArrayList<>();
        for (Meeting meeting : concerned(now)) {
            Outcome outcome = takesPlace(meeting, now) ? checked.apply(meeting).worst() : null;
            if (outcome == Outcome.FAILS) {
                return outcome;
            }
            if (outcome != null) {
                lookedAt.add(meeting);
            }
            worst = outcome == Outcome.UNTOLD ? outcome : worst;
        }
        return unlookedAt(now, lookedAt.stream()).isEmpty() ? worst : Outcome.UNTOLD;
    }

    /** The meetings on which what was put in has a bearing, each once. */
    static List<Meeting> concerned(Fitted now) {
        return now.places().meetingsAt(now.putIn().keySet());
    }

    /** A gear that is in one with its shaft has no seat on it. */
    static boolean takesPlace(Meeting meeting, Fitted now) {
        return meeting.kind() != MeetingKind.SEAT || now.hasOwnPart(meeting.one());
    }

    /** That a part comes with others says nothing of the part. */
    private static boolean looksAtParts(Meeting meeting) {
        return meeting.kind() != MeetingKind.TOGETHER;
    }
}
