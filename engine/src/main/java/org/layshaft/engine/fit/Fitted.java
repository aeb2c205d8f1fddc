package org.layshaft.engine.fit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** A box and the part that stands at each of its places, as far as it is known. Immutable. */
public final class Fitted {
    /** The place of the case. */
    public static final String CASE = "box-case";

    private final Places places;
    private final SoldTogether together;
    private final Map<String, CataloguePart> original;
    private final Map<String, CataloguePart> placed;

    private Fitted(
            Places places,
            SoldTogether together,
            Map<String, CataloguePart> original,
            Map<String, CataloguePart> placed) {
        this.places = places;
        this.together = together;
        this.original = original;
        this.placed = placed;
    }

    /** As boxes of this build left the works. */
    static Fitted of(Places places, Build build, Catalogue catalogue, SoldTogether together) {
        Map<String, CataloguePart> parts = new LinkedHashMap<>();
        build.fitted().forEach((place, number) -> catalogue.part(number).ifPresent(part -> parts.put(place, part)));
        return new Fitted(places, together, parts, Map.of());
    }

    /** With these parts by place, nothing else being known, and every part to be had by itself. */
    public static Fitted of(Layout layout, Map<String, CataloguePart> parts) {
        return new Fitted(Places.of(layout), SoldTogether.in(Catalogue.EMPTY), new LinkedHashMap<>(parts), Map.of());
    }

    /** With other parts put in at these places, those put in before staying. */
    public Fitted with(Map<String, CataloguePart> others) {
        if (placed.isEmpty()) {
            return new Fitted(places, together, original, others);
        }
        Map<String, CataloguePart> more = new LinkedHashMap<>(placed);
        more.putAll(others);
        return new Fitted(places, together, original, more);
    }

    public Layout layout() {
        return places.layout();
    }

    Places places() {
        return places;
    }

    SoldTogether together() {
        return together;
    }

    /** The part that stands at a place by itself; null where nobody has told, or where the place is a feature of another. */
    public CataloguePart ownPartAt(String place) {
        CataloguePart put = placed.get(place);
        return put != null ? put : original.get(place);
    }

    /** The part that stands at a place, or of which the place is a feature; null where nobody has told. */
    public CataloguePart partAt(String place) {
        CataloguePart own = ownPartAt(place);
        if (own != null) {
            return own;
        }
        String carrier = places.carrierOf(place);
        return carrier == null ? null : ownPartAt(carrier);
    }

    /** The number of the part that stands at a place by itself; null where there is none. */
    String numberAt(String place) {
        CataloguePart own = ownPartAt(place);
        return own == null ? null : own.number();
    }

    /** Whether a part of its own stands there, not one made in one with what carries it. */
    public boolean hasOwnPart(String place) {
        return ownPartAt(place) != null;
    }

    /** The parts put in, by place. */
    public Map<String, CataloguePart> putIn() {
        return Collections.unmodifiableMap(placed);
    }

    /** Whether a part of this number stands anywhere in it. */
    public boolean holds(String number) {
        return placed.values().stream().anyMatch(part -> part.number().equals(number))
                || original.entrySet().stream()
                        .anyMatch(entry ->
                                entry.getValue().number().equals(number) && !placed.containsKey(entry.getKey()));
    }

    /** The sets beside the rest of which this part serves; none where it serves beside anything. */
    public List<PartSet> designs(CataloguePart part) {
        return together.designs(part.number());
    }

    /** The sets that this part is only to be had in; none where it is to be had by itself. */
    public List<PartSet> onlyIn(CataloguePart part) {
        return together.wholeSets(part.number());
    }

    /** What is known of the place itself: of the part there, or of that feature of the part that carries it. */
    public Facts at(String place) {
        CataloguePart own = ownPartAt(place);
        if (own != null) {
            return own.facts();
        }
        String carrier = places.carrierOf(place);
        return carrier == null ? Facts.NONE : on(carrier, place);
    }

    /** What is known of the spot where something sits on the part at a place. */
    public Facts on(String place, String feature) {
        CataloguePart part = ownPartAt(place);
        return part == null ? Facts.NONE : part.feature(feature);
    }

    /** The two lines of shafts in the case, in whichever order it names them. */
    public Facts centre(String shaft, String other) {
        Facts told = on(CASE, shaft + "/" + other);
        return told == Facts.NONE ? on(CASE, other + "/" + shaft) : told;
    }

    /** Ids of the gears that a shaft carries. */
    public List<String> gearsOn(String shaft) {
        return places.gearsOn(shaft);
    }

    /** Ids of the bearings that a shaft turns in, and of the needles on it. */
    public List<String> bearingsOf(String shaft) {
        return places.bearingsOf(shaft);
    }

    /** What a place is called: {@code third gear}. */
    public String nameOf(String place) {
        return layout().find(Part.class, place).map(Part::name).orElse(place.replace('-', ' '));
    }
}
