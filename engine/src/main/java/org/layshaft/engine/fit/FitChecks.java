package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.stream.Stream;

/** The checks that there are, by what they look at; those that only compare come first. */
public final class FitChecks {
    private final Map<MeetingKind, FitCheck[]> byMeeting = new EnumMap<>(MeetingKind.class);
    private final List<FitCheck> all;

    private FitChecks(List<FitCheck> found) {
        List<FitCheck> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparing(FitCheck::meeting)
                .thenComparing(FitCheck::reckons)
                .thenComparing(FitCheck::id));
        all = List.copyOf(sorted);
        for (MeetingKind kind : MeetingKind.values()) {
            byMeeting.put(
                    kind, all.stream().filter(check -> check.meeting() == kind).toArray(FitCheck[]::new));
        }
    }

    /** Every check on the class path. */
    public static FitChecks found() {
        return new FitChecks(ServiceLoader.load(FitCheck.class).stream()
                .map(ServiceLoader.Provider::get)
                .toList());
    }

    /** These and no others. */
    public static FitChecks of(FitCheck... checks) {
        return new FitChecks(List.of(checks));
    }

    public List<FitCheck> all() {
        return all;
    }

    /** What every check says of a meeting. */
    Stream<Judgement> judge(Meeting meeting, Fitted before, Fitted now) {
        return Stream.of(byMeeting.get(meeting.kind()))
                .flatMap(check -> check.judge(new Judging(check, meeting, before, now, false)).stream());
    }

    /** The worst that any check says of a meeting; it looks no further once one fails. Null where none says anything. */
    Outcome worst(Meeting meeting, Fitted before, Fitted now) {
        Outcome worst = null;
        for (FitCheck check : byMeeting.get(meeting.kind())) {
            Outcome outcome = outcome(check, meeting, before, now);
            if (outcome == Outcome.FAILS) {
                return Outcome.FAILS;
            }
            if (outcome != null && worst != Outcome.UNTOLD) {
                worst = outcome;
            }
        }
        return worst;
    }

    /** The first check that fails at a meeting; null where none does. */
    FitCheck firstFailing(Meeting meeting, Fitted before, Fitted now) {
        for (FitCheck check : byMeeting.get(meeting.kind())) {
            if (outcome(check, meeting, before, now) == Outcome.FAILS) {
                return check;
            }
        }
        return null;
    }

    /** Without words; null where the check has nothing to say. */
    static Outcome outcome(FitCheck check, Meeting meeting, Fitted before, Fitted now) {
        Judgement judgement =
                check.judge(new Judging(check, meeting, before, now, true)).orElse(null);
        return judgement == null ? null : judgement.outcome();
    }
}
