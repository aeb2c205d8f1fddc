package org.layshaft.engine.train;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.exact.Fraction;

/** What becomes of the torque of a train when its meshes lose some of the power that goes through them. */
public sealed interface Losses {

    /** Which end drives. */
    enum Flow {
        /** The engine pulls: a torque of 1 enters at the input. */
        DRIVE,
        /** The engine brakes: a torque of 1 is held back at the input, and the wheels must bring it. */
        OVERRUN
    }

    /**
     * The power gets through.
     *
     * @param output the torque that the output gives to its load; below zero for one that the load gives
     * @param torques by connection id, the torque that it puts on each body that it ties, by body id
     * @param power how the power runs, in turns of the input times its torque
     * @param efficiency the part of the power that leaves of the power that enters
     * @param shareIsAssumed as for {@link Balance.Torques}
     */
    record Passed(
            Fraction output,
            Map<String, Map<String, Fraction>> torques,
            Power power,
            Fraction efficiency,
            boolean shareIsAssumed)
            implements Losses {
        public Passed {
            torques = Collections.unmodifiableMap(new LinkedHashMap<>(torques));
        }
    }

    /** It does not drive even without losses. */
    record NoDrive() implements Losses {}

    /** The losses are greater than what would be left to go through: driven from this end, it jams. */
    record SelfLocking() implements Losses {}

    /**
     * Which way the losses act cannot be settled: with each choice of what drives in a mesh, the torques say otherwise.
     */
    record Undecided() implements Losses {}

    /**
     * Some efficiencies are missing.
     *
     * @param meshes ids of the connections under load for which none is stated
     */
    record Unknown(List<String> meshes) implements Losses {
        public Unknown {
            meshes = List.copyOf(meshes);
        }
    }

    static Losses of(Train train, Efficiencies efficiencies, Flow flow) {
        return new LossySolver(train, efficiencies, flow).solve();
    }
}
