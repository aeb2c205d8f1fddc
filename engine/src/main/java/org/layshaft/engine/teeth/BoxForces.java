package org.layshaft.engine.teeth;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.Statics;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Layout;

/**
 * Tooth forces and thrusts of a whole box in one stance.
 *
 * @param meshes those that carry torque, in the order of the train
 * @param thrusts by shaft, for every shaft with a gear that carries torque
 * @param shareIsAssumed whether paths lie in parallel, so that how they share the torque is assumed
 */
public record BoxForces(List<MeshForces> meshes, Map<String, ShaftThrust> thrusts, boolean shareIsAssumed) {
    public BoxForces {
        meshes = List.copyOf(meshes);
        thrusts = Map.copyOf(thrusts);
    }

    /** Empty where no torque reaches the output: then there are no lasting forces either. */
    public static Optional<BoxForces> of(Layout layout, Train train, InputTorque input) {
        return Statics.of(train).torques().map(torques -> of(layout, train, torques, input));
    }

    private static BoxForces of(Layout layout, Train train, Balance.Torques torques, InputTorque input) {
        LoadedMeshes loaded = new LoadedMeshes(layout, new Hands(layout), TrainSolver.solve(train), torques, input);
        List<MeshForces> meshes = train.connections().stream()
                .filter(Connection.Meshing.class::isInstance)
                .map(Connection.Meshing.class::cast)
                .filter(torques::carries)
                .map(loaded::forces)
                .toList();
        ShaftThrusts shafts = new ShaftThrusts(layout, meshes);
        Map<String, ShaftThrust> thrusts = new LinkedHashMap<>();
        shafts.loaded().forEach(shaft -> thrusts.put(shaft, shafts.of(shaft)));
        return new BoxForces(meshes, thrusts, torques.shareIsAssumed());
    }
}
