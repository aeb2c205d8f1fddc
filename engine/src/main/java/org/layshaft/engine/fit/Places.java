package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** The places of a layout, and which meetings the part at each has a bearing on. Made once for each layout. */
final class Places {
    private final Layout layout;
    private final Map<String, String> carriers = new HashMap<>();
    private final Map<String, List<Meeting>> meetings;
    private final Map<Meeting, List<String>> involved = new HashMap<>();

    private Places(Layout layout) {
        this.layout = layout;
        layout.all(Gear.class).forEach(gear -> carriers.put(gear.id(), gear.carrier()));
        Map<String, Set<Meeting>> byPlace = new HashMap<>();
        Meetings.of(layout).forEach(meeting -> {
            involved.put(meeting, List.copyOf(involvedIn(meeting)));
            involved.get(meeting)
                    .forEach(place -> byPlace.computeIfAbsent(place, none -> new LinkedHashSet<>())
                            .add(meeting));
        });
        List<String> all = new ArrayList<>(layout.parts().keySet());
        all.addAll(List.of(Build.SPEED_DRIVING, Build.SPEED_DRIVEN));
        all.forEach(place -> {
            Meeting together = new Meeting(MeetingKind.TOGETHER, place, place);
            involved.put(together, List.of(place));
            byPlace.computeIfAbsent(place, none -> new LinkedHashSet<>()).add(together);
        });
        this.meetings = byPlace.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> List.copyOf(entry.getValue())));
    }

    static Places of(Layout layout) {
        return new Places(layout);
    }

    /** A gear that is cut on its shaft changes with the shaft. */
    private Set<String> involvedIn(Meeting meeting) {
        Set<String> places = new LinkedHashSet<>();
        for (String place : List.of(meeting.one(), meeting.other())) {
            places.add(place);
            places.add(carriers.getOrDefault(place, place));
        }
        if (meeting.kind() == MeetingKind.TEETH) {
            places.add(Fitted.CASE);
        } else if (meeting.kind() == MeetingKind.SEAT) {
            layout.all(Bearing.class)
                    .filter(bearing -> bearing.outer().equals(meeting.one()))
                    .forEach(needles -> places.add(needles.id()));
        } else if (meeting.kind() == MeetingKind.THRUST) {
            layout.all(Gear.class)
                    .filter(gear -> gear.carrier().equals(meeting.one()))
                    .forEach(gear -> places.add(gear.id()));
            layout.all(Bearing.class)
                    .filter(bearing -> bearing.inner().equals(meeting.one()))
                    .forEach(bearing -> places.add(bearing.id()));
        }
        return places;
    }

    Layout layout() {
        return layout;
    }

    /** Id of what carries a gear; null for any other place. */
    String carrierOf(String place) {
        return carriers.get(place);
    }

    /** The meetings on which the part at this place has a bearing. */
    List<Meeting> meetingsAt(String place) {
        return meetings.getOrDefault(place, List.of());
    }

    /** The places whose parts have a bearing on a meeting. */
    List<String> involved(Meeting meeting) {
        return involved.getOrDefault(meeting, List.of());
    }

    /** Whether a layout has this part. */
    boolean has(String place) {
        return layout.find(Part.class, place).isPresent();
    }
}
