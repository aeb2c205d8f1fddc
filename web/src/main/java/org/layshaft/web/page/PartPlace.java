package org.layshaft.web.page;

import org.layshaft.kb.layout.PartKind;

/** Where about a vehicle a part is to be found. */
enum PartPlace {
    TRAIN("Shafts, gears and bearings"),
    SYNCHRONISERS("Sleeves and rings"),
    SELECTING("Shift mechanism in the box"),
    LEVER("Lever, linkage and what works them"),
    CLUTCH("Clutch side"),
    CASE("Around the box: oil, seals, mountings"),
    FINAL_DRIVE("Final drive and differential"),
    WHEELS("Shafts to the wheels, and wheels");

    private final String heading;

    PartPlace(String heading) {
        this.heading = heading;
    }

    String heading() {
        return heading;
    }

    static PartPlace of(PartKind kind) {
        return switch (kind) {
            case SHAFT, GEAR, BEARING, THRUST_WASHER, TIMING, CHAIN -> TRAIN;
            case SLEEVE, HUB, KEYS, BLOCKING_RING, CLUTCHING_TEETH, DOG_RING -> SYNCHRONISERS;
            case FORK, RAIL, DETENT, INTERLOCK, INTERLOCK_PIECE, SHIFT_DRUM, SELECTOR_FINGER, LOCK_OUT -> SELECTING;
            case GEAR_LEVER, LEVER_BUSH, LEVER_BOOT, LINKAGE, SHIFT_CABLE, GATE_CABLE, ACTUATOR -> LEVER;
            case CLUTCH, CLUTCH_HOUSING, RELEASE_BEARING, FLYWHEEL_BEARING, ENGINE -> CLUTCH;
            case MOUNTINGS, OIL, SEALS, BREATHER, BOX_CASE, SPEED_READING -> CASE;
            case FINAL_DRIVE,
                    DIFFERENTIAL,
                    SIDE_GEARS,
                    DIFFERENTIAL_PINIONS,
                    CROSS_SHAFT,
                    CARRIER_BEARINGS,
                    LIMITED_SLIP -> FINAL_DRIVE;
            case HALF_SHAFT, INNER_JOINT, OUTER_JOINT, WHEEL_BEARING, TYRES, JOINT -> WHEELS;
        };
    }
}
