package org.layshaft.engine.fit;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Layout;

/** Asks single checks, for tests that stand outside the package. */
public final class AskedChecks {
    private static final Map<Layout, List<Meeting>> MEETINGS = Collections.synchronizedMap(new IdentityHashMap<>());

    private AskedChecks() {}

    /** What a check says at each place that is of its kind; nothing where it has nothing to say. */
    public static List<Judgement> of(FitCheck check, Fitted before, Fitted now) {
        return of(check, before, now, false);
    }

    /** The same where only the outcome counts. */
    public static List<Judgement> briefly(FitCheck check, Fitted before, Fitted now) {
        return of(check, before, now, true);
    }

    private static List<Judgement> of(FitCheck check, Fitted before, Fitted now, boolean brief) {
        return meetings(check, now)
                .flatMap(meeting -> new Judging(meeting, before, now, brief).by(check).stream())
                .toList();
    }

    /** A gear that is in one with its shaft has no seat on it. */
    private static Stream<Meeting> meetings(FitCheck check, Fitted now) {
        return MEETINGS.computeIfAbsent(now.layout(), Meetings::of).stream()
                .filter(meeting -> meeting.kind() == check.meeting())
                .filter(meeting -> meeting.kind() != MeetingKind.SEAT || now.hasOwnPart(meeting.one()));
    }
}
