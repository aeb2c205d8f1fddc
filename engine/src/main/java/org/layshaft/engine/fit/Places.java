package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;

/** The places of a layout, and which meetings the part at each has a bearing on. Made once for each layout. */
final class Places {
    private final Layout layout;
    private final Map<String, String> carriers = new HashMap<>();
    private final Map<String, List<String>> gears = new HashMap<>();
    private final Map<String, List<String>> bearings = new HashMap<>();
    private final List<Meeting> meetings = new ArrayList<>();
    private final Map<String, List<Integer>> meetingsAt = new HashMap<>();
    private final Map<Meeting, List<String>> involved = new HashMap<>();

    private Places(Layout layout) {
        this.layout = layout;
        layout.all(Gear.class).forEach(gear -> {
            carriers.put(gear.id(), gear.carrier());
            gears.computeIfAbsent(gear.carrier(), none -> new ArrayList<>()).add(gear.id());
        });
        layout.all(Bearing.class)
                .forEach(bearing -> bearings.computeIfAbsent(bearing.inner(), none -> new ArrayList<>())
                        .add(bearing.id()));
        Meetings.of(layout).forEach(meeting -> add(meeting, involvedIn(meeting)));
        List<String> all = new ArrayList<>(layout.parts().keySet());
        all.addAll(List.of(Build.SPEED_DRIVING, Build.SPEED_DRIVEN));
        all.forEach(place -> add(new Meeting(MeetingKind.TOGETHER, place, place), Set.of(place)));
    }

    private void add(Meeting meeting, Set<String> places) {
        involved.put(meeting, List.copyOf(places));
        places.forEach(place ->
                meetingsAt.computeIfAbsent(place, none -> new ArrayList<>()).add(meetings.size()));
        meetings.add(meeting);
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
        } else if (meeting.kind() == MeetingKind.RING_GEAR) {
            // which ratio the differential must carry hangs on the pinion too
            layout.everyMesh()
                    .filter(mesh -> mesh.joins(meeting.one()))
                    .map(mesh -> mesh.other(meeting.one()))
                    .forEach(pinion -> places.addAll(List.of(pinion, carriers.get(pinion))));
        } else if (meeting.kind() == MeetingKind.THRUST) {
            places.addAll(gearsOn(meeting.one()));
            places.addAll(bearingsOf(meeting.one()));
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

    /** Ids of the gears that a shaft, or what else it is, carries. */
    List<String> gearsOn(String carrier) {
        return Collections.unmodifiableList(gears.getOrDefault(carrier, List.of()));
    }

    /** Ids of the bearings that a shaft turns in, and of the needles on it. */
    List<String> bearingsOf(String shaft) {
        return Collections.unmodifiableList(bearings.getOrDefault(shaft, List.of()));
    }

    /** The meetings on which the parts at these places have a bearing, each once. */
    List<Meeting> meetingsAt(Set<String> places) {
        List<Meeting> found = new ArrayList<>();
        BitSet seen = new BitSet(meetings.size());
        for (String place : places) {
            for (int meeting : meetingsAt.getOrDefault(place, List.of())) {
                if (!seen.get(meeting)) {
                    seen.set(meeting);
                    found.add(meetings.get(meeting));
                }
            }
        }
        return found;
    }

    /** The places whose parts have a bearing on a meeting. */
    List<String> involved(Meeting meeting) {
        return involved.getOrDefault(meeting, List.of());
    }
}
