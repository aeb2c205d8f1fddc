package org.layshaft.engine.identify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.identify.NormalPitch.Series;
import org.layshaft.engine.involute.InvoluteGear;

/** Fits every standard gear to the measurements, and ranks those that agree. */
final class Search {
    private static final double[] ANGLES_DEG = {20, 14.5, 17.5, 22.5, 25};
    private static final int FEWEST_TEETH = 6;
    private static final int MOST_TEETH = 150;
    private static final int NEAREST = 5;

    /** Misfits that differ by less do not tell candidates apart. */
    private static final double TELLING = 1;

    private Search() {}

    static Identification identify(BenchGear bench) {
        List<Candidate> fitted = fitted(bench);
        List<Candidate> consistent =
                fitted.stream().filter(Candidate::isConsistent).toList();
        if (!consistent.isEmpty()) {
            List<Candidate> ranked = ranked(consistent);
            return new Identification(ranked, List.of(), NextMeasurement.of(bench, ranked));
        }
        return new Identification(
                ranked(fitted).stream().limit(NEAREST).toList(), Contradictions.of(bench, fitted), Optional.empty());
    }

    /** Every standard gear with an ordinary shift that comes near, best first. */
    static List<Candidate> fitted(BenchGear bench) {
        Fitting fitting = new Fitting(bench, bench.helix().orElseThrow());
        List<Candidate> candidates = new ArrayList<>();
        for (NormalPitch pitch : NormalPitch.standard()) {
            for (double angleDeg : ANGLES_DEG) {
                for (int teeth = bench.teeth().orElse(FEWEST_TEETH);
                        teeth <= bench.teeth().orElse(MOST_TEETH);
                        teeth++) {
                    fitting.best(teeth, pitch.moduleMm(), angleDeg)
                            .ifPresent(gear -> candidates.add(candidate(bench, pitch, gear)));
                }
            }
        }
        candidates.sort(Comparator.comparingDouble(Candidate::misfit));
        return candidates;
    }

    private static Candidate candidate(BenchGear bench, NormalPitch pitch, InvoluteGear gear) {
        List<Residual> residuals = Fitting.residuals(bench, gear);
        double misfit = gear.shift() * gear.shift();
        for (Residual residual : residuals) {
            misfit += residual.share() * residual.share();
        }
        List<String> remarks = new ArrayList<>();
        misfit += remark(remarks, pitch.series() == Series.MODULE_SECOND, 0.3, "a module of the second series");
        misfit += remark(remarks, pitch.series() == Series.DIAMETRAL_PITCH, 0.3, "by diametral pitch");
        misfit += remark(remarks, pitch.isToBeAvoided(), 0.3, "a module to be avoided");
        misfit += remark(remarks, gear.pressureAngleDeg() != 20, 0.3, "a pressure angle other than 20 degrees");
        double least = gear.smallestShift().orElse(gear.shift());
        misfit += remark(remarks, gear.shift() < least - 0.05, 1, "undercut");
        misfit += remark(remarks, gear.topLandMm() < 0.1 * gear.moduleMm(), 1, "pointed teeth");
        return new Candidate(1, pitch, gear, residuals, misfit, List.copyOf(remarks));
    }

    private static double remark(List<String> remarks, boolean holds, double cost, String words) {
        if (holds) {
            remarks.add(words);
        }
        return holds ? cost : 0;
    }

    private static List<Candidate> ranked(List<Candidate> bestFirst) {
        List<Candidate> ranked = new ArrayList<>();
        int rank = 1;
        double leader = bestFirst.isEmpty() ? 0 : bestFirst.get(0).misfit();
        for (Candidate candidate : bestFirst) {
            if (candidate.misfit() - leader >= TELLING) {
                rank = ranked.size() + 1;
                leader = candidate.misfit();
            }
            ranked.add(candidate.withRank(rank));
        }
        return List.copyOf(ranked);
    }
}
