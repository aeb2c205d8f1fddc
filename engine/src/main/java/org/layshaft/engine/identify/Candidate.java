package org.layshaft.engine.identify;

import java.util.List;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.stated.Shown;

/**
 * A standard gear that the measured one may be.
 *
 * @param rank 1 is best; candidates that the measurements do not tell apart have one rank
 * @param gear with the shift, and where it is helical the helix angle, that fit best
 * @param residuals each measurement, in the order given
 * @param misfit the squares of the residuals in allowances, with something added for what is out of the ordinary
 * @param remarks what is out of the ordinary about it, in words
 */
public record Candidate(
        int rank, NormalPitch pitch, InvoluteGear gear, List<Residual> residuals, double misfit, List<String> remarks) {

    /** Whether every measurement lies within its allowance. */
    public boolean isConsistent() {
        return residuals.stream().allMatch(Residual::isWithinAllowance);
    }

    /** {@code 24 teeth, module 2.5 mm, pressure angle 20 degrees, straight, shift 0.25}. */
    public String words() {
        return "%d teeth, %s, pressure angle %s degrees, %s, shift %s"
                .formatted(
                        gear.teeth(),
                        pitch.words(),
                        Shown.decimal(gear.pressureAngleDeg()),
                        gear.helixDeg() == 0 ? "straight" : "helix " + rounded(gear.helixDeg(), 10) + " degrees",
                        rounded(gear.shift(), 100));
    }

    /** What was fitted to measurements is not told finer than it is known. */
    private static String rounded(double number, int parts) {
        return Shown.decimal((double) Math.round(number * parts) / parts);
    }

    Candidate withRank(int other) {
        return new Candidate(other, pitch, gear, residuals, misfit, remarks);
    }
}
