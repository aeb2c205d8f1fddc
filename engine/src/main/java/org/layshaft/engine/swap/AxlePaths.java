package org.layshaft.engine.swap;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;

/**
 * Follows the drive of a layout to each axle by itself, the wheels of the others off the ground. Where a differential lies
 * between axles, none is driven at a fixed ratio so.
 */
record AxlePaths(Layout layout) {

    /** Every two axles that are tied in any of these gears. */
    List<TiedAxles> tiedIn(List<Box.DerivedGear> gears) {
        Map<String, Set<String>> axles = axles();
        List<TiedAxles> tied = new ArrayList<>();
        if (axles.size() > 1) {
            gears.forEach(gear -> tied.addAll(tied(gear, axles)));
        }
        return List.copyOf(tied);
    }

    private List<TiedAxles> tied(Box.DerivedGear gear, Map<String, Set<String>> axles) {
        Train train = new TrainBuilder(layout, Changes.NONE).at(gear.stance());
        Map<String, Fraction> ratios = new LinkedHashMap<>();
        axles.forEach((axle, wheels) -> ratioTo(wheels, train).ifPresent(ratio -> ratios.put(axle, ratio)));
        List<String> fixed = List.copyOf(ratios.keySet());
        List<TiedAxles> tied = new ArrayList<>();
        for (int i = 0; i < fixed.size(); i++) {
            for (String other : fixed.subList(i + 1, fixed.size())) {
                tied.add(new TiedAxles(gear.name(), fixed.get(i), ratios.get(fixed.get(i)), other, ratios.get(other)));
            }
        }
        return tied;
    }

    private static Optional<Fraction> ratioTo(Set<String> wheels, Train train) {
        List<Connection> alone = train.connections().stream()
                .filter(connection ->
                        !(connection instanceof Connection.Rolling rolling) || wheels.contains(rolling.output()))
                .toList();
        return TrainSolver.solve(Train.of(train.bodies(), alone, train.input(), train.output()))
                .ratio();
    }

    /** The wheels of each axle, by the id of its differential; any other output stands for itself. */
    private Map<String, Set<String>> axles() {
        Map<String, Set<String>> axles = new LinkedHashMap<>();
        for (String output : layout.outputs()) {
            Optional<HalfShaft> halfShaft = layout.find(HalfShaft.class, output);
            axles.computeIfAbsent(halfShaft.map(HalfShaft::differential).orElse(output), any -> new LinkedHashSet<>())
                    .add(halfShaft.map(HalfShaft::wheel).orElse(output));
        }
        return axles;
    }
}
