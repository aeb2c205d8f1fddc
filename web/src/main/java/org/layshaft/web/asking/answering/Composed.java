package org.layshaft.web.asking.answering;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.NeutralVerdict;
import org.layshaft.engine.api.Stance;

/**
 * An answer's own words, and what of the box they are about.
 *
 * @param says sentences
 */
record Composed(
        List<String> says,
        List<String> gears,
        Stance stance,
        Optional<Motion> motion,
        List<String> parts,
        List<Conflict> conflicts) {

    static Composed of(List<String> says) {
        return new Composed(says, List.of(), Stance.NEUTRAL, Optional.empty(), List.of(), List.of());
    }

    Composed about(List<String> meant) {
        return new Composed(says, meant, stance, motion, parts, conflicts);
    }

    Composed aboutParts(List<String> meant) {
        return new Composed(says, gears, stance, motion, meant, conflicts);
    }

    Composed aboutPairs(List<Conflict> pairs) {
        return new Composed(says, gears, stance, motion, parts, pairs);
    }

    Composed in(GearVerdict gear) {
        return new Composed(says, List.of(gear.gear()), gear.stance(), Optional.of(gear.motion()), parts, conflicts);
    }

    Composed in(NeutralVerdict neutral) {
        return new Composed(says, gears, neutral.stance(), Optional.of(neutral.motion()), parts, conflicts);
    }
}
