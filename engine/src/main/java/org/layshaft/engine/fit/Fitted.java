package org.layshaft.engine.fit;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** A box and the part that stands at each of its places, as far as it is known. Immutable. */
public final class Fitted {
    /** The place of the case. */
    public static final String CASE = "box-case";

    private final Layout layout;
    private final List<Meeting> meetings;
    private final Map<String, List<Meeting>> meetingsAt;
    private final Map<String, String> carriers;
    private final Map<String, CataloguePart> parts;

    private Fitted(
            Layout layout,
            List<Meeting> meetings,
            Map<String, List<Meeting>> meetingsAt,
            Map<String, String> carriers,
            Map<String, CataloguePart> parts) {
        this.layout = layout;
        this.meetings = meetings;
        this.meetingsAt = meetingsAt;
        this.carriers = carriers;
        this.parts = parts;
    }

    /** As boxes of this build left the works. */
    public static Fitted of(Layout layout, Build build, Catalogue catalogue) {
        Map<String, CataloguePart> parts = new LinkedHashMap<>();
        build.fitted().forEach((place, number) -> catalogue.part(number).ifPresent(part -> parts.put(place, part)));
        return of(layout, parts);
    }

    /** With these parts by place, nothing else being known. */
    public static Fitted of(Layout layout, Map<String, CataloguePart> parts) {
        List<Meeting> meetings = Meetings.of(layout);
        Map<String, String> carriers = new HashMap<>();
        layout.all(Gear.class).forEach(gear -> carriers.put(gear.id(), gear.carrier()));
        Map<String, List<Meeting>> meetingsAt = MeetingsByPlace.of(layout, meetings, carriers);
        return new Fitted(layout, meetings, meetingsAt, carriers, new LinkedHashMap<>(parts));
    }

    /** With other parts at these places. */
    public Fitted with(Map<String, CataloguePart> others) {
        Map<String, CataloguePart> changed = new LinkedHashMap<>(parts);
        changed.putAll(others);
        return new Fitted(layout, meetings, meetingsAt, carriers, changed);
    }

    public Layout layout() {
        return layout;
    }

    /** Parts by place. */
    public Map<String, CataloguePart> parts() {
        return Collections.unmodifiableMap(parts);
    }

    /** The part that stands at a place, or of which the place is a feature; null where nobody has told. */
    public CataloguePart partAt(String place) {
        CataloguePart own = parts.get(place);
        return own != null ? own : parts.get(carriers.getOrDefault(place, place));
    }

    /** Whether a part of its own stands there, not one made in one with what carries it. */
    public boolean hasOwnPart(String place) {
        return parts.containsKey(place);
    }

    /** What is known of the place itself: of the part there, or of that feature of the part that carries it. */
    public Facts at(String place) {
        CataloguePart own = parts.get(place);
        if (own != null) {
            return own.facts();
        }
        String carrier = carriers.get(place);
        return carrier == null ? Facts.NONE : on(carrier, place);
    }

    /** What is known of the spot where something sits on the part at a place. */
    public Facts on(String place, String feature) {
        CataloguePart part = parts.get(place);
        return part == null ? Facts.NONE : part.feature(feature);
    }

    /** The two lines of shafts in the case, in whichever order it names them. */
    public Facts centre(String shaft, String other) {
        Facts told = on(CASE, shaft + "/" + other);
        return told == Facts.NONE ? on(CASE, other + "/" + shaft) : told;
    }

    public List<Meeting> meetings() {
        return meetings;
    }

    /** The meetings on which the part at this place has a bearing. */
    public List<Meeting> meetingsAt(String place) {
        return meetingsAt.getOrDefault(place, List.of());
    }

    /** What a place is called: {@code third gear}. */
    public String nameOf(String place) {
        return layout.find(Part.class, place).map(Part::name).orElse(place.replace('-', ' '));
    }

    /** Id of what carries this gear; empty for any other place. */
    public Optional<String> carrierOf(String place) {
        return Optional.ofNullable(carriers.get(place));
    }
}
