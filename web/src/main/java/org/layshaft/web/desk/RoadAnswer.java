package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.EffortPoint;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Layout;

/**
 * A box on the road.
 *
 * @param told whether facts of the vehicle were told besides those that the layout states
 * @param speedometer how much too high it reads after what was told, in per cent; empty where nothing that it reads from
 *     was
 * @param teeth what the engine does from first to top, shifting up at the end of its range; a tooth for each forward gear
 * @param pulls tractive effort of every forward gear over road speed
 * @param against what holds the vehicle back on the level
 */
public record RoadAnswer(
        Box box,
        MeasureSystem units,
        boolean told,
        Vehicle vehicle,
        RoadTable table,
        Optional<Telling<Fraction>> speedometer,
        Telling<Revs> revs,
        Telling<List<Tooth>> teeth,
        Telling<List<GearPull>> pulls,
        Telling<Against> against) {

    public Layout layout() {
        return box.layout();
    }

    /** Speeds of the engine, the second the higher, in turns a minute. */
    public record Revs(Fraction lowestRpm, Fraction highestRpm) {}

    /**
     * One gear, from where it is taken to where it is left.
     *
     * @param fromRpm what the engine turns once the gear is in
     * @param toRpm what it turns as the gear is left
     */
    public record Tooth(String gear, Fraction fromKmh, Fraction toKmh, Fraction fromRpm, Fraction toRpm) {}

    /** What the engine at full load does at the tyres in one gear. */
    public record GearPull(String gear, List<EffortPoint> points) {
        public GearPull {
            points = List.copyOf(points);
        }
    }

    /** Resistance on the level: rolling, and what grows with the square of the speed. */
    public record Against(double rollingN, double dragPerKmhSquaredN) {
        public double newtons(double kmh) {
            return rollingN + dragPerKmhSquaredN * kmh * kmh;
        }
    }
}
