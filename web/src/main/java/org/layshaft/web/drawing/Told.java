package org.layshaft.web.drawing;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.layshaft.engine.api.Torques;
import org.layshaft.engine.exact.Fraction;

/**
 * What is told of parts besides how they move.
 *
 * @param torques on everything for 1 on the input; empty where none are wanted, or none reach the output
 * @param inputRpm speed of the input in turns a minute, where it is told
 * @param inputNm torque on the input in N·m, where it is told
 * @param word what a part of this name is called by those who read
 * @param also what else one should know it as, a phrase each
 */
public record Told(
        Optional<Torques> torques,
        Optional<Fraction> inputRpm,
        Optional<Fraction> inputNm,
        UnaryOperator<String> word,
        Function<String, List<String>> also) {
    /** Nothing, parts being called as the layout has it. */
    public static final Told NOTHING =
            new Told(Optional.empty(), Optional.empty(), Optional.empty(), UnaryOperator.identity(), name -> List.of());
}
