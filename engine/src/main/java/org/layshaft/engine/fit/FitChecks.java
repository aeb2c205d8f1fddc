package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;

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
    List<Judgement> judge(Meeting meeting, Fitted before, Fitted now) {
        Judging judging = new Judging(meeting, before, now, false);
        List<Judgement> judgements = new ArrayList<>();
        for (FitCheck check : byMeeting.get(meeting.kind())) {
            judging.by(check).ifPresent(judgements::add);
        }
        return judgements;
    }

    /** The same where only outcomes count. */
    CheckedMeeting check(Meeting meeting, Fitted before, Fitted now) {
        return new CheckedMeeting(byMeeting.get(meeting.kind()), meeting, before, now);
    }
}
