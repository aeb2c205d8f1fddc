package org.layshaft.web.asking;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the wheels behind a differential may be up to. */
public enum WheelsCase {
    ONE_SLIPS("one driven wheel slips"),
    JACKED_UP("both driven wheels are off the ground and one is turned by hand"),
    IN_A_BEND("the vehicle goes through a bend"),
    SHARES("torque is shared between the wheels");

    private final String says;

    WheelsCase(String says) {
        this.says = says;
    }

    String says() {
        return says;
    }

    /** As written in packs: {@code one-slips}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<WheelsCase> of(String word) {
        return Arrays.stream(values()).filter(each -> each.word().equals(word)).findFirst();
    }
}
