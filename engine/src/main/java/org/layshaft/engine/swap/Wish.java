package org.layshaft.engine.swap;

import java.util.List;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Shown;
import org.layshaft.engine.stated.Telling;

/** What somebody would like of one gear, to be had by other teeth. */
public sealed interface Wish {

    /** The gear that is to change, by its derived name. */
    String gear();

    /** Every gear that it speaks of. */
    default List<String> gears() {
        return List.of(gear());
    }

    /** What ratio that comes to in a vehicle. */
    Telling<Target> target(Vehicle vehicle);

    /**
     * A ratio of its own.
     *
     * @param within the part of the ratio that it may be missed by
     */
    record RatioOf(String gear, Fraction ratio, Fraction within) implements Wish {
        @Override
        public Telling<Target> target(Vehicle vehicle) {
            return Telling.told(Target.around(ratio, within));
        }
    }

    /**
     * A step between it and another gear that stays.
     *
     * @param step the larger ratio of the two over the smaller
     * @param within the part of the ratio that it may be missed by
     */
    record StepTo(String gear, String other, Fraction step, Fraction within) implements Wish {
        @Override
        public List<String> gears() {
            return List.of(gear, other);
        }

        @Override
        public Telling<Target> target(Vehicle vehicle) {
            Fraction now = ratio(vehicle, gear);
            Fraction stays = ratio(vehicle, other);
            Fraction ideal = now.compareTo(stays) > 0 ? stays.times(step) : stays.over(step);
            return Telling.told(Target.around(ideal, within));
        }
    }

    /** Nearer another gear that stays, by however little; what moves it least is the best. */
    record Nearer(String gear, String other) implements Wish {
        @Override
        public List<String> gears() {
            return List.of(gear, other);
        }

        @Override
        public Telling<Target> target(Vehicle vehicle) {
            return Telling.told(Target.between(ratio(vehicle, gear), ratio(vehicle, other)));
        }
    }

    /**
     * Another engine speed at a road speed, on the tyres and the axle that there are: 300 rpm lower at 100 km/h.
     *
     * @param rpmMore less than 0 for a lower one
     * @param within the part of the ratio that it may be missed by
     */
    record CruiseBy(String gear, Fraction kmh, Fraction rpmMore, Fraction within) implements Wish {
        @Override
        public Telling<Target> target(Vehicle vehicle) {
            return vehicle.speeds().rpmAt(gear, kmh).then(now -> at(vehicle, gear, now, now.plus(rpmMore), within));
        }
    }

    /**
     * An engine speed at a road speed: 5000 rpm at the top speed that is wished for.
     *
     * @param within the part of the ratio that it may be missed by
     */
    record RpmAt(String gear, Fraction kmh, Fraction rpm, Fraction within) implements Wish {
        @Override
        public Telling<Target> target(Vehicle vehicle) {
            return vehicle.speeds().rpmAt(gear, kmh).then(now -> at(vehicle, gear, now, rpm, within));
        }
    }

    private static Telling<Target> at(Vehicle vehicle, String gear, Fraction rpmNow, Fraction rpm, Fraction within) {
        return rpm.signum() > 0
                ? Telling.told(Target.around(ratio(vehicle, gear).times(rpm).over(rpmNow), within))
                : Telling.cannotBeTold(List.of("the engine would turn at %s rpm, where it turns at %s now"
                        .formatted(Shown.decimal(rpm), Shown.decimal(rpmNow))));
    }

    private static Fraction ratio(Vehicle vehicle, String gear) {
        return vehicle.gearing().ratios().get(gear).absolute();
    }
}
