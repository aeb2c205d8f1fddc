package org.layshaft.engine.fit;

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

/** Which meetings the part at a place has a bearing on: those it stands in, and those it has a feature in. */
final class MeetingsByPlace {
    private final Map<String, Set<Meeting>> byPlace = new HashMap<>();

    private MeetingsByPlace() {}

    static Map<String, List<Meeting>> of(Layout layout, List<Meeting> meetings, Map<String, String> carriers) {
        MeetingsByPlace places = new MeetingsByPlace();
        for (Meeting meeting : meetings) {
            places.add(meeting.one(), meeting);
            places.add(meeting.other(), meeting);
            // a gear that is cut on its shaft changes with the shaft
            places.add(carriers.getOrDefault(meeting.one(), meeting.one()), meeting);
            places.add(carriers.getOrDefault(meeting.other(), meeting.other()), meeting);
            switch (meeting.kind()) {
                case TEETH -> places.add(Fitted.CASE, meeting);
                case SEAT ->
                    layout.all(Bearing.class)
                            .filter(bearing -> bearing.outer().equals(meeting.one()))
                            .forEach(needles -> places.add(needles.id(), meeting));
                case THRUST -> {
                    Meetings.gearsOn(layout, meeting.one()).stream()
                            .map(Gear::id)
                            .forEach(gear -> places.add(gear, meeting));
                    layout.all(Bearing.class)
                            .filter(bearing -> bearing.inner().equals(meeting.one()))
                            .forEach(bearing -> places.add(bearing.id(), meeting));
                }
                default -> {}
            }
        }
        layout.parts().keySet().forEach(place -> places.add(place, new Meeting(MeetingKind.TOGETHER, place, place)));
        Set.of(Build.SPEED_DRIVING, Build.SPEED_DRIVEN)
                .forEach(place -> places.add(place, new Meeting(MeetingKind.TOGETHER, place, place)));
        return places.byPlace.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> List.copyOf(entry.getValue())));
    }

    private void add(String place, Meeting meeting) {
        byPlace.computeIfAbsent(place, none -> new LinkedHashSet<>()).add(meeting);
    }
}
