package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A box during a search, and what fails in it with these parts or those put in. A search comes by the same parts at the
 * same meeting again and again; what was said of them is remembered.
 */
final class SearchedBox {
    private final Judges judges;
    private final Fitted before;
    private final Map<Stand, CheckedMeeting> checked = new HashMap<>();

    SearchedBox(Judges judges, Fitted before) {
        this.judges = judges;
        this.before = before;
    }

    /** The first check that fails at each meeting where one does. */
    List<Unfit> unfits(Fitted now) {
        List<Unfit> unfits = new ArrayList<>();
        for (Meeting meeting : Judges.concerned(now)) {
            FitCheck failing =
                    Judges.takesPlace(meeting, now) ? checked(meeting, now).firstFailing() : null;
            if (failing != null) {
                unfits.add(new Unfit(failing, meeting, before, now));
            }
        }
        return unfits;
    }

    /** Whether a check fails no longer. A part of which nothing is told leaves that open, and is no cure. */
    boolean isCured(Unfit unfit, Fitted then) {
        Outcome outcome = checked(unfit.meeting(), then).of(unfit.check());
        return outcome == null || outcome == Outcome.HOLDS;
    }

    /** Whether everything can be told, and nothing fails. */
    boolean isTold(Fitted now) {
        return Judges.worst(now, meeting -> checked(meeting, now)) == Outcome.HOLDS;
    }

    private CheckedMeeting checked(Meeting meeting, Fitted now) {
        // what a part comes with may stand anywhere
        return meeting.kind() == MeetingKind.TOGETHER
                ? judges.check(meeting, before, now)
                : checked.computeIfAbsent(Stand.of(meeting, now), first -> judges.check(meeting, before, now));
    }

    /** A meeting and the numbers of the parts that have a bearing on it. */
    private record Stand(Meeting meeting, List<String> numbers) {

        static Stand of(Meeting meeting, Fitted now) {
            List<String> places = now.places().involved(meeting);
            String[] numbers = new String[places.size()];
            for (int place = 0; place < numbers.length; place++) {
                numbers[place] = now.numberAt(places.get(place));
            }
            return new Stand(meeting, Arrays.asList(numbers));
        }
    }
}
