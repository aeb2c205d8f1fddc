package org.layshaft.kb.failure;

import java.util.Locale;

/**
 * When something is noticed: the closed list of conditions. Those {@linkplain #isInGear() in gear} are asked of every gear
 * in turn, the others once.
 */
public enum Situation {
    /** Engine stopped, vehicle standing: one looks, smells, rocks things by hand. */
    AT_REST(false),
    /** Engine stopped, lever in neutral, the vehicle is pushed. */
    PUSHED(false),
    /** Engine stopped: the lever is moved into and out of the gear. */
    AT_THE_LEVER(true),
    /** Engine running, vehicle standing, lever in neutral, pedal up. */
    NEUTRAL_PEDAL_UP(false),
    /** The same with the pedal down. */
    NEUTRAL_PEDAL_DOWN(false),
    /** Engine running, vehicle standing, the gear selected, pedal down. */
    IN_GEAR_PEDAL_DOWN(true),
    /** The clutch is let in with the gear selected and the vehicle standing. */
    SELECTED(true),
    /** The engine drives the wheels. */
    PULLING(true),
    /** The wheels drive the engine. */
    OVERRUN(true),
    /** Steady speed, hardly any torque either way. */
    FLOATING(true),
    /** From pulling to overrun and back. */
    ON_AND_OFF(true),
    /** Pulling through a bend. */
    IN_A_BEND(true),
    /** Rolling with the lever in neutral, engine running, pedal up. */
    ROLLING_IN_NEUTRAL(false),
    /** The lever is moved into the gear, the vehicle rolling and the pedal down. */
    SHIFTING_INTO(true),
    /** The lever is moved out of the gear. */
    SHIFTING_OUT_OF(true);

    private final boolean inGear;

    Situation(boolean inGear) {
        this.inGear = inGear;
    }

    /** Whether it is asked of every gear. */
    public boolean isInGear() {
        return inGear;
    }

    /** As written in packs: {@code neutral-pedal-up}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
