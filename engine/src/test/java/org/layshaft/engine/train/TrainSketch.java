package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Side;

/** A train put together by hand, body by body. */
public final class TrainSketch {
    private final Set<String> bodies = new LinkedHashSet<>();
    private final List<Connection> connections = new ArrayList<>();

    public TrainSketch mesh(String first, int firstTeeth, String second, int secondTeeth) {
        return add(new Connection.Meshing(new Mesh(first, second), firstTeeth, secondTeeth));
    }

    public TrainSketch mesh(MeshKind kind, String first, int firstTeeth, String second, int secondTeeth) {
        return add(new Connection.Meshing(new Mesh(first, second, kind), firstTeeth, secondTeeth));
    }

    /** An external mesh with a planet that a carrier takes round. */
    public TrainSketch meshOn(String carrier, String first, int firstTeeth, String second, int secondTeeth) {
        return meshOn(carrier, MeshKind.EXTERNAL, first, firstTeeth, second, secondTeeth);
    }

    public TrainSketch meshOn(
            String carrier, MeshKind kind, String first, int firstTeeth, String second, int secondTeeth) {
        return add(new Connection.Meshing(
                new Mesh(first, second, kind), firstTeeth, secondTeeth, Optional.of(carrier), Optional.empty()));
    }

    /** A set of sun, planet and ring. */
    public TrainSketch planetary(
            String carrier, String sun, int sunTeeth, String planet, int planetTeeth, String ring, int ringTeeth) {
        return meshOn(carrier, sun, sunTeeth, planet, planetTeeth)
                .meshOn(carrier, MeshKind.INTERNAL, planet, planetTeeth, ring, ringTeeth);
    }

    /** Bodies that turn as one. */
    public TrainSketch tied(String first, String... others) {
        for (String other : others) {
            add(new Connection.Closed(first + " to " + other, first, other));
        }
        return this;
    }

    /** A body that the case holds. */
    public TrainSketch held(String body) {
        return add(new Connection.Held(body, "case"));
    }

    /** Gears fixed on a shaft. */
    public TrainSketch on(String shaft, String... gears) {
        for (String gear : gears) {
            add(new Connection.Seated(gear, shaft, gear));
        }
        return this;
    }

    /** A sleeve, its hub fixed on a shaft. */
    public TrainSketch sleeve(String sleeve, String shaft) {
        return add(new Connection.Seated(sleeve, shaft, sleeve + "-hub"));
    }

    public TrainSketch coupled(String sleeve, Side side, String gear) {
        return add(new Connection.Coupled(sleeve, side, gear, gear + "-clutching-teeth"));
    }

    public TrainSketch seized(String gear, String shaft) {
        return add(new Connection.Seized(gear, shaft));
    }

    public TrainSketch split(String differential, String left, String right) {
        return add(new Connection.Split(differential, left, right));
    }

    public TrainSketch joined(String halfShaft, String wheel) {
        return add(new Connection.Joined(halfShaft, wheel));
    }

    /** Wheels that roll straight ahead on one road. */
    public TrainSketch rolling(String... wheels) {
        for (String wheel : wheels) {
            add(new Connection.Rolling(wheel));
        }
        return this;
    }

    /** A wheel that turns so often for one turn of the road. */
    public TrainSketch rolling(String wheel, Fraction turns) {
        return add(new Connection.Rolling(wheel, turns));
    }

    public Train from(String input, String output) {
        bodies.add(input);
        bodies.add(output);
        return Train.of(List.copyOf(bodies), connections, input, output);
    }

    private TrainSketch add(Connection connection) {
        connections.add(connection);
        bodies.addAll(connection.equation().coefficients().keySet());
        return this;
    }
}
