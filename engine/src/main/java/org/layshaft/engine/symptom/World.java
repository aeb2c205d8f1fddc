package org.layshaft.engine.symptom;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fault.KnownFault;
import org.layshaft.engine.train.Condition;
import org.layshaft.kb.failure.Situation;

/** What becomes of one layout, by the equations, with some faults or with none. Not thread-safe. */
public final class World {
    /** What stands for a gear where none is selected. */
    public static final String NEUTRAL = "neutral";

    private final Sound sound;
    private final Effects effects;
    private final Trains trains;
    private final Shifting shifting;
    private final Map<String, Stance> stances = new HashMap<>();
    private final Map<String, Trains.Solved> solved = new HashMap<>();
    private final Map<Situation, Map<String, Moment>> moments = new HashMap<>();
    private Set<String> letGo;

    World(Sound sound, Effects effects) {
        this.sound = sound;
        this.effects = effects;
        this.trains = sound.trains(effects.changes());
        this.shifting = new Shifting(sound.layout(), effects);
    }

    /** The world with these faults, everything told. */
    public static World of(Sound sound, List<KnownFault> faults) {
        Effects effects = faults.stream()
                .map(known -> EffectsOf.fault(sound.layout(), known.fault(), known.mode()))
                .reduce(Effects.NONE, Effects::and);
        return new World(sound, effects);
    }

    Sound sound() {
        return sound;
    }

    Effects effects() {
        return effects;
    }

    /** Rails that can be out of neutral together, and could not in the sound box. */
    Set<String> letGo() {
        if (letGo == null) {
            letGo = shifting.letGo();
        }
        return letGo;
    }

    /** Whether this gear drives at its ratio. */
    public boolean works(String gear) {
        return !effects.noDrive()
                && motion(gear).ratio().equals(sound.gear(gear).motion().ratio());
    }

    /** Whether the box can only stand with this gear selected, or in neutral. */
    public boolean locks(String at) {
        return switch (motion(at).outcome()) {
            case LOCKED, INPUT_HELD, OUTPUT_HELD -> true;
            case DRIVES, NEUTRAL -> false;
        };
    }

    /** Whether nothing drives with this gear selected, this one or another. */
    public boolean isWithoutDrive(String gear) {
        return !locks(gear) && (effects.noDrive() || motion(gear).ratio().isEmpty());
    }

    /** Whether the box drives in neutral, which it does not when sound. */
    public boolean neutralDrives() {
        return sound.hasNeutral()
                && !effects.noDrive()
                && motion(NEUTRAL).ratio().isPresent();
    }

    /** How everything turns and is loaded. */
    public Moment moment(Situation situation, String gear) {
        return moments.computeIfAbsent(situation, any -> new HashMap<>())
                .computeIfAbsent(gear, at -> reckon(situation, at));
    }

    private Moment reckon(Situation situation, String gear) {
        return switch (situation) {
            case AT_REST, PUSHED, AT_THE_LEVER, SHIFTING_INTO, SHIFTING_OUT_OF -> Moment.STILL;
            case NEUTRAL_PEDAL_UP -> motion(NEUTRAL).ratio().isPresent() ? rolling(NEUTRAL) : standing(NEUTRAL);
            case ROLLING_IN_NEUTRAL -> rolling(NEUTRAL);
            case NEUTRAL_PEDAL_DOWN -> effects.drags() ? standing(NEUTRAL) : released(NEUTRAL);
            case IN_GEAR_PEDAL_DOWN -> effects.drags() ? driven(gear) : released(gear);
            case SELECTED -> driven(gear);
            case PULLING -> works(gear) ? loaded(gear, Condition.ROLLING, true, false) : Moment.STILL;
            case OVERRUN -> works(gear) ? loaded(gear, Condition.ROLLING, false, true) : Moment.STILL;
            case ON_AND_OFF -> works(gear) ? loaded(gear, Condition.ROLLING, true, true) : Moment.STILL;
            case FLOATING -> works(gear) ? loaded(gear, Condition.ROLLING, false, false) : Moment.STILL;
            case IN_A_BEND -> works(gear) ? bend(gear) : Moment.STILL;
        };
    }

    /** Engine running, vehicle standing, pedal up. */
    private Moment standing(String at) {
        return locks(at)
                ? Moment.STILL
                : unloaded(at, effects.slips() ? Condition.STANDING.withClutchReleased() : Condition.STANDING, false);
    }

    private Moment released(String at) {
        return unloaded(at, Condition.STANDING.withClutchReleased(), true);
    }

    private Moment rolling(String at) {
        return locks(at)
                ? Moment.STILL
                : unloaded(at, effects.slips() ? Condition.ROLLING.withClutchReleased() : Condition.ROLLING, false);
    }

    /** With the clutch let in: rolling where anything drives, and else with the vehicle standing. */
    private Moment driven(String gear) {
        if (locks(gear)) {
            return Moment.STILL;
        }
        return isWithoutDrive(gear) ? standing(gear) : loaded(gear, Condition.ROLLING, true, false);
    }

    private Moment unloaded(String at, Condition condition, boolean pressed) {
        return new Moment(trains.turned(stance(at), condition), Set.of(), Map.of(), pressed, true);
    }

    private Moment loaded(String gear, Condition condition, boolean pulls, boolean overruns) {
        Trains.Solved solved = solved(gear);
        boolean any = pulls || overruns;
        return new Moment(
                trains.turned(stance(gear), condition),
                any ? solved.carrying() : Set.of(),
                any ? sound.flanks().of(solved.signs(), pulls, overruns) : Map.of(),
                false,
                true);
    }

    private Moment bend(String gear) {
        Map<String, Fraction> bend = sound.bend();
        if (bend.isEmpty()) {
            return loaded(gear, Condition.ROLLING, true, false);
        }
        Condition turning =
                new Condition(Condition.Clutch.ENGAGED, Condition.Vehicle.ROLLING, Condition.Pull.DRIVE, bend);
        boolean canRoll = trains.turned(stance(gear), turning).wheelsCanRoll();
        Trains.Solved solved = solved(gear);
        return new Moment(
                trains.turned(stance(gear), canRoll ? turning : Condition.ROLLING),
                solved.carrying(),
                sound.flanks().of(solved.signs(), true, false),
                false,
                canRoll);
    }

    private Motion motion(String at) {
        return solved(at).state().motion();
    }

    private Trains.Solved solved(String at) {
        return solved.computeIfAbsent(at, gear -> trains.at(stance(gear)));
    }

    private Stance stance(String at) {
        return stances.computeIfAbsent(at, gear -> shifting.stance(pushes(gear)));
    }

    private List<Box.Push> pushes(String at) {
        return at.equals(NEUTRAL) ? sound.neutral() : sound.gear(at).pushes();
    }
}
