package org.layshaft.kb.catalogue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Everything that can be stated of a part or of a place on it. Lengths are in mm, angles in degrees.
 *
 * <p>A fact has one of three sorts of value: a number, a word out of a list, or a designation.
 */
public enum FactName {
    FORM(Section.TOOTHING, "form", "form of the teeth", "external", "internal", "bevel"),
    TEETH(Section.TOOTHING, "teeth", "number of teeth", Unit.COUNT),
    MODULE_MM(Section.TOOTHING, "module_mm", "normal module", Unit.MM),
    DIAMETRAL_PITCH(Section.TOOTHING, "diametral_pitch", "normal diametral pitch", Unit.PER_INCH),
    PRESSURE_ANGLE_DEG(Section.TOOTHING, "pressure_angle_deg", "normal pressure angle", Unit.DEG),
    HELIX_DEG(Section.TOOTHING, "helix_deg", "helix angle", Unit.DEG),
    HAND(Section.TOOTHING, "hand", "hand of the helix", "left", "right"),
    PROFILE_SHIFT(Section.TOOTHING, "profile_shift", "profile shift", Unit.RATIO),
    SPAN_TEETH(Section.TOOTHING, "span_teeth", "number of teeth in the span", Unit.COUNT),
    SPAN_MM(Section.TOOTHING, "span_mm", "span over teeth", Unit.MM),
    /** By the letter of ISO 53. */
    RACK(Section.TOOTHING, "rack", "basic rack", "A", "B", "C", "D"),
    TIP_MM(Section.TOOTHING, "tip_mm", "tip diameter", Unit.MM),
    FACE_MM(Section.TOOTHING, "face_mm", "face width", Unit.MM),
    BACKLASH_LEAST_MM(Section.TOOTHING, "backlash_least_mm", "least backlash it is to run with", Unit.MM),
    BACKLASH_MOST_MM(Section.TOOTHING, "backlash_most_mm", "most backlash it is to run with", Unit.MM),
    /** Whether a gear was lapped with its mate, so that neither serves with another. */
    LAPPED(Section.TOOTHING, "lapped", "whether it is lapped with its mate", "no", "yes"),
    /** Part number of the gear it was lapped with. */
    LAPPED_WITH(Section.TOOTHING, "lapped_with", "the mate it is lapped with"),
    /** From the crossing of the axes to the back of the gear. */
    MOUNTING_MM(Section.TOOTHING, "mounting_mm", "mounting distance", Unit.MM),
    /** Between the axes of a hypoid pair; 0 where they cross. */
    OFFSET_MM(Section.TOOTHING, "offset_mm", "offset of the axes", Unit.MM),

    HELD_BY(Section.SEAT, "held_by", "way it is held on its seat", "needles", "bush", "spline", "press", "in-one"),
    SEAT_MM(Section.SEAT, "diameter_mm", "diameter of the seat", Unit.MM),
    SEAT_LENGTH_MM(Section.SEAT, "length_mm", "length of the seat", Unit.MM),
    /** DIN 5480, ISO 4156 or ANSI B92.1, without the letter that tells shaft from hub. */
    SPLINE(Section.SEAT, "spline", "spline"),
    SPLINE_LENGTH_MM(Section.SEAT, "spline_mm", "length of the spline", Unit.MM),

    CLUTCHING_TEETH(Section.CLUTCHING, "teeth", "number of clutching teeth", Unit.COUNT),
    CLUTCHING_MM(Section.CLUTCHING, "diameter_mm", "outside diameter of the clutching teeth", Unit.MM),
    /** From the axis to the side of the point: half the angle of the point. */
    CHAMFER_DEG(Section.CLUTCHING, "chamfer_deg", "chamfer of the clutching teeth", Unit.DEG),
    /** How far the sides lean so that load draws the sleeve on. */
    BACK_TAPER_DEG(Section.CLUTCHING, "back_taper_deg", "back taper of the clutching teeth", Unit.DEG),

    CONE_DEG(Section.CONE, "half_angle_deg", "half angle of the cone", Unit.DEG),
    /** At the middle of the width that rubs. */
    CONE_MM(Section.CONE, "diameter_mm", "mean diameter of the cone", Unit.MM),
    CONE_TYPE(Section.CONE, "type", "type of cone", "single", "double", "triple"),
    FRICTION(Section.CONE, "friction", "coefficient of friction of the cone", Unit.RATIO),

    /** Between ring and gear, pressed home and new. */
    RESERVE_MM(Section.RING, "reserve_mm", "reserve of the ring", Unit.MM),
    RING_SLOTS(Section.RING, "slots", "number of key slots", Unit.COUNT),
    RING_SLOT_MM(Section.RING, "slot_mm", "width of a key slot", Unit.MM),

    KEY_MM(Section.KEY, "width_mm", "width of a key", Unit.MM),

    SLIDING_TEETH(Section.SLIDING, "teeth", "number of sliding splines", Unit.COUNT),
    /** Inside of the sleeve, outside of the hub. */
    SLIDING_MM(Section.SLIDING, "diameter_mm", "diameter of the sliding splines", Unit.MM),
    SLIDING_CHAMFER_DEG(Section.SLIDING, "chamfer_deg", "chamfer of the sliding splines", Unit.DEG),
    SLIDING_BACK_TAPER_DEG(Section.SLIDING, "back_taper_deg", "back taper of the sliding splines", Unit.DEG),
    HUB_SLOTS(Section.SLIDING, "slots", "number of key slots of the hub", Unit.COUNT),
    HUB_SLOT_MM(Section.SLIDING, "slot_mm", "width of a key slot of the hub", Unit.MM),

    GROOVE_MM(Section.GROOVE, "width_mm", "width of the fork groove", Unit.MM),
    GROOVE_BOTTOM_MM(Section.GROOVE, "bottom_mm", "diameter of the bottom of the fork groove", Unit.MM),
    PAD_MM(Section.PAD, "width_mm", "width of the fork pads", Unit.MM),
    PAD_SPAN_MM(Section.PAD, "span_mm", "distance across the fork pads", Unit.MM),
    RAIL_MM(Section.RAIL, "diameter_mm", "diameter of the rail", Unit.MM),

    SERIES(Section.BEARING, "series", "series of the bearing"),
    BORE_MM(Section.BEARING, "bore_mm", "bore of the bearing", Unit.MM),
    OUTSIDE_MM(Section.BEARING, "outside_mm", "outside of the bearing", Unit.MM),
    WIDTH_MM(Section.BEARING, "width_mm", "width of the bearing", Unit.MM),
    THRUST(Section.BEARING, "thrust", "thrust that the bearing takes", "none", "front", "rear", "both"),

    NEEDLES_INSIDE_MM(Section.NEEDLES, "inside_mm", "inside of the needles", Unit.MM),
    NEEDLES_OUTSIDE_MM(Section.NEEDLES, "outside_mm", "outside of the needles", Unit.MM),
    NEEDLES_WIDTH_MM(Section.NEEDLES, "width_mm", "width of the needles", Unit.MM),

    THICKNESS_MM(Section.SHIM, "thickness_mm", "thickness of the shim", Unit.MM),

    REGISTER_MM(Section.FLANGE, "register_mm", "register diameter of the flange", Unit.MM),
    BOLTS(Section.FLANGE, "bolts", "number of bolts of the flange", Unit.COUNT),
    BOLT_CIRCLE_MM(Section.FLANGE, "bolt_circle_mm", "bolt circle of the flange", Unit.MM),
    /** Of a differential case: the ratios whose ring gears stand right on it. */
    LOWEST_RATIO(Section.FLANGE, "lowest_ratio", "lowest ratio that the flange is made for", Unit.RATIO),
    HIGHEST_RATIO(Section.FLANGE, "highest_ratio", "highest ratio that the flange is made for", Unit.RATIO),
    /** Of a ring gear: the flange that its thickness is made for; with the differential's own it stands right. */
    MADE_FOR_RATIO(
            Section.FLANGE, "made_for_ratio", "ratio of the flange that the ring gear is made thick for", Unit.RATIO),

    CENTRE_MM(Section.CENTRE, "distance_mm", "centre distance", Unit.MM),
    CENTRE_TOLERANCE_MM(Section.CENTRE, "tolerance_mm", "tolerance of the centre distance", Unit.MM);

    /** What a number counts. */
    public enum Unit {
        MM(" mm"),
        DEG("°"),
        PER_INCH(" per inch"),
        COUNT(""),
        RATIO("");

        private final String suffix;

        Unit(String suffix) {
            this.suffix = suffix;
        }

        /** What stands behind the number: {@code " mm"}. */
        public String suffix() {
            return suffix;
        }
    }

    private final Section section;
    private final String key;
    private final String spoken;
    private final Optional<Unit> unit;
    private final List<String> words;

    FactName(Section section, String key, String spoken, Unit unit) {
        this(section, key, spoken, Optional.of(unit), List.of());
    }

    FactName(Section section, String key, String spoken, String... words) {
        this(section, key, spoken, Optional.empty(), List.of(words));
    }

    FactName(Section section, String key, String spoken, Optional<Unit> unit, List<String> words) {
        this.section = section;
        this.key = key;
        this.spoken = spoken;
        this.unit = unit;
        this.words = words;
    }

    public Section section() {
        return section;
    }

    /** Its key in its section: {@code module_mm}. */
    public String key() {
        return key;
    }

    /** As it stands in a sentence, without an article: {@code normal module}. */
    public String spoken() {
        return spoken;
    }

    /** Empty for a word or a designation. */
    public Optional<Unit> unit() {
        return unit;
    }

    /** The words it can be; empty for a number or a designation. */
    public List<String> words() {
        return words;
    }

    /** As written in catalogues: {@code toothing/module_mm}. */
    public String path() {
        return section.word() + "/" + key;
    }

    /** The fact of this path. */
    public static Optional<FactName> at(String path) {
        return Arrays.stream(values()).filter(fact -> fact.path().equals(path)).findFirst();
    }
}
