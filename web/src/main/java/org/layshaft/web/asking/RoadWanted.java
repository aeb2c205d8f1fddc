package org.layshaft.web.asking;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is asked about the road. */
public enum RoadWanted {
    RPM_AT("the engine speed"),
    SPEED_AT("the road speed"),
    TOP("the top speed"),
    PER_1000("the road speed per 1000 rpm"),
    STEPS("the steps between gears"),
    STEEPEST("the steepest hill"),
    AXLE_FOR("the axle for the same cruise"),
    SPEEDOMETER("what the speedometer reads");

    private final String says;

    RoadWanted(String says) {
        this.says = says;
    }

    String says() {
        return says;
    }

    /** As written in packs: {@code rpm-at}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<RoadWanted> of(String word) {
        return Arrays.stream(values()).filter(each -> each.word().equals(word)).findFirst();
    }
}
