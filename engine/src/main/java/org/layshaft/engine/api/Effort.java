package org.layshaft.engine.api;

import java.util.Locale;
import org.layshaft.kb.failure.Depth;
import org.layshaft.kb.failure.Situation;

/**
 * What trouble it is to look into something. Costs are about minutes of one person, common practice, no source: what counts
 * is their order.
 */
public enum Effort {
    /** Where the vehicle stands, in neutral or with the pedal down. */
    STANDING(2),
    /** Lever and clutch, where the vehicle stands. */
    AT_THE_LEVER(3),
    /** On the road. */
    ROAD_TEST(10),
    /** Under the vehicle, with nothing opened. */
    FROM_OUTSIDE(15),
    /** A plug is drawn. */
    PLUG(20),
    /** A cover comes off. */
    COVER(90),
    /** The box comes out. */
    BOX_OUT(300),
    /** The box is taken to pieces. */
    STRIPPED(600);

    private final int cost;

    Effort(int cost) {
        this.cost = cost;
    }

    public int cost() {
        return cost;
    }

    /** As written in JSON: {@code road-test}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Effort of(Situation situation) {
        return switch (situation) {
            case AT_REST, PUSHED, NEUTRAL_PEDAL_UP, NEUTRAL_PEDAL_DOWN, IN_GEAR_PEDAL_DOWN -> STANDING;
            case AT_THE_LEVER, SELECTED -> AT_THE_LEVER;
            case PULLING,
                    OVERRUN,
                    FLOATING,
                    ON_AND_OFF,
                    IN_A_BEND,
                    ROLLING_IN_NEUTRAL,
                    SHIFTING_INTO,
                    SHIFTING_OUT_OF -> ROAD_TEST;
        };
    }

    public static Effort of(Depth depth) {
        return switch (depth) {
            case OUTSIDE -> FROM_OUTSIDE;
            case PLUG -> PLUG;
            case COVER -> COVER;
            case BOX_OUT -> BOX_OUT;
            case STRIPPED -> STRIPPED;
        };
    }
}
