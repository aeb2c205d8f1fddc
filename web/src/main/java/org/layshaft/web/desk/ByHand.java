package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.Torques;

/**
 * What comes of a stance that somebody set, likely or not.
 *
 * @param motion how everything turns in it
 * @param torques on everything; empty where the output does not follow the input
 * @param says what it does and why, in sentences
 * @param leversAllow whether the levers can bring it about
 * @param ofLevers why they can or cannot, in sentences
 */
public record ByHand(
        Stance stance,
        Motion motion,
        Optional<Torques> torques,
        List<String> says,
        boolean leversAllow,
        List<String> ofLevers) {
    public ByHand {
        says = List.copyOf(says);
        ofLevers = List.copyOf(ofLevers);
    }
}
