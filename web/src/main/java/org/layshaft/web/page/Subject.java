package org.layshaft.web.page;

import static org.layshaft.web.asking.Intent.*;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.web.asking.Intent;

/** What questions are about, in the order in which they are offered. */
enum Subject {
    WORKS("What works, and why not", GEARS_LEFT, WHAT_HAPPENS, WHY_NOT, WHY_NONE, TWO_AT_ONCE),
    NOTICED("What is noticed", SUSPECTS, FREQUENCY, MESH_FREQUENCY),
    BOX("Inside the box", POWER_PATH, RATIO, WHAT_TURNS, WHICH_WAY, WHICH_GEAR, WHAT_FOR, TEETH),
    ROAD("On the road", Intent.ROAD, TORQUE, DIFFERENTIAL, TOWED, COMPARE),
    REASONS("Words and reasons", DEFINE, EXPLAIN),
    PARTS("Parts", FITS, FITS_HERE, SUPPLIED, PUT_IN, NEARER, AXLE_FOR, SPEED_GEAR, MEASURED, OTHER_TYRES);

    private final String heading;
    private final Set<Intent> intents;

    Subject(String heading, Intent first, Intent... others) {
        this.heading = heading;
        this.intents = EnumSet.of(first, others);
    }

    String heading() {
        return heading;
    }

    static Subject of(Intent intent) {
        return Stream.of(values())
                .filter(subject -> subject.intents.contains(intent))
                .findFirst()
                .orElseThrow();
    }
}
