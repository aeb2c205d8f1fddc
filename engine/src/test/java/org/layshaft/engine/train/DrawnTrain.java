package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Side;

/** A train drawn at random, grown from its input piece by piece with everything that a layout can describe. */
final class DrawnTrain {
    private final SplittableRandom random;
    private final Set<String> bodies = new LinkedHashSet<>();
    private final List<Connection> connections = new ArrayList<>();
    private final List<String> ends = new ArrayList<>();
    private boolean hasWheels;

    private DrawnTrain(long seed) {
        random = new SplittableRandom(seed);
    }

    /** The same train for the same seed. */
    static Train of(long seed) {
        return new DrawnTrain(seed).grown();
    }

    /** The train with one or two faults: something that ties gone, or something seized. */
    static Train faulted(Train train, int faults, SplittableRandom random) {
        List<Connection> left = new ArrayList<>(train.connections());
        for (int fault = 0; fault < faults; fault++) {
            if (random.nextInt(3) > 0 && !left.isEmpty()) {
                left.remove(random.nextInt(left.size()));
            } else {
                String one = any(train.bodies(), random);
                String other = any(train.bodies(), random);
                left.add(
                        one.equals(other)
                                ? new Connection.Held(one, "case")
                                : new Connection.Closed("fault-" + fault, one, other));
            }
        }
        return Train.of(train.bodies(), left, train.input(), train.output());
    }

    private Train grown() {
        ends.add("input");
        bodies.add("input");
        int pieces = random.nextInt(1, 5);
        for (int piece = 0; piece < pieces; piece++) {
            grow(piece);
        }
        if (ends.size() == 1) {
            pair("input", "last");
        }
        String output = hasWheels && random.nextInt(4) > 0 ? Train.ROAD : ends.get(ends.size() - 1);
        return Train.of(List.copyOf(bodies), connections, "input", output);
    }

    private void grow(int piece) {
        String from = any(ends, random);
        switch (random.nextInt(10)) {
            case 0, 1 -> pair(from, "p" + piece);
            case 2 -> twins(from, "t" + piece);
            case 3 -> planets(from, "e" + piece, List.of("planet"));
            case 4 -> planets(from, "d" + piece, List.of("inner", "outer"));
            case 5 -> stepped(from, "s" + piece);
            case 6 -> bevelPlanets(from, "b" + piece);
            case 7 -> axle(from, "a" + piece);
            case 8 -> coupled(from, "c" + piece);
            default -> loop("l" + piece);
        }
    }

    /** A gear on the shaft in mesh with one on a shaft of its own. */
    private void pair(String from, String name) {
        MeshKind kind = MeshKind.values()[random.nextInt(MeshKind.values().length)];
        seat(name + "-driver", from);
        mesh(name + "-driver", name + "-driven", kind, Optional.empty(), Optional.empty());
        seat(name + "-driven", end(name));
    }

    /** Two countershafts between two gears, alike unless a tooth was miscounted. */
    private void twins(String from, String name) {
        int driver = teeth();
        int driven = teeth();
        int pinion = teeth();
        int gear = teeth();
        for (String side : List.of("left", "right")) {
            String countershaft = name + "-" + side;
            int miscounted = random.nextInt(20) == 0 ? 1 : 0;
            add(new Connection.Meshing(new Mesh(from, countershaft + "-driven"), driver, driven + miscounted));
            seat(countershaft + "-driven", countershaft);
            seat(countershaft + "-pinion", countershaft);
            add(new Connection.Meshing(new Mesh(countershaft + "-pinion", name), pinion, gear));
        }
        ends.add(name);
    }

    /** Sun, ring and carrier with planets between them, one after another. */
    private void planets(String from, String name, List<String> between) {
        String inner = name + "-sun";
        for (String planet : between) {
            mesh(inner, name + "-" + planet, MeshKind.EXTERNAL, Optional.of(name + "-carrier"), Optional.empty());
            inner = name + "-" + planet;
        }
        mesh(inner, name + "-ring", MeshKind.INTERNAL, Optional.of(name + "-carrier"), Optional.empty());
        joinUp(from, List.of(name + "-sun", name + "-ring", name + "-carrier"));
    }

    /** Two gears on one planet, each in mesh with a sun or a ring of its own. */
    private void stepped(String from, String name) {
        Optional<String> carrier = Optional.of(name + "-carrier");
        seat(name + "-first-step", name + "-planet");
        seat(name + "-second-step", name + "-planet");
        mesh(name + "-one", name + "-first-step", outerOrInner(), carrier, Optional.empty());
        mesh(name + "-other", name + "-second-step", outerOrInner(), carrier, Optional.empty());
        joinUp(from, List.of(name + "-one", name + "-other", name + "-carrier"));
    }

    /** A bevel planet between two crowns. */
    private void bevelPlanets(String from, String name) {
        Optional<String> carrier = Optional.of(name + "-carrier");
        Optional<String> planet = Optional.of(name + "-planet");
        mesh(name + "-left", name + "-planet", MeshKind.BEVEL, carrier, planet);
        mesh(name + "-right", name + "-planet", MeshKind.BEVEL_OPPOSITE, carrier, planet);
        joinUp(from, List.of(name + "-left", name + "-right", name + "-carrier"));
    }

    /** A differential with wheels on the road, now and then locked or with a half-shaft broken. */
    private void axle(String from, String name) {
        seat(name, from);
        add(new Connection.Split(name, name + "-left", name + "-right"));
        for (String side : List.of("left", "right")) {
            String halfShaft = name + "-" + side;
            if (random.nextInt(12) > 0) {
                add(new Connection.Joined(halfShaft, halfShaft + "-wheel"));
            }
            add(new Connection.Rolling(halfShaft + "-wheel"));
        }
        if (random.nextInt(4) == 0) {
            add(new Connection.Coupled(name + "-left", Side.FRONT, name, name + "-teeth"));
        }
        hasWheels = true;
    }

    private void coupled(String from, String name) {
        seat(name + "-sleeve", from);
        add(new Connection.Coupled(name + "-sleeve", Side.REAR, end(name), name + "-teeth"));
    }

    /** Ties two ends that may be tied already, at a ratio that may not fit. */
    private void loop(String name) {
        String one = any(ends, random);
        String other = any(ends, random);
        if (one.equals(other)) {
            pair(one, name);
        } else if (random.nextBoolean()) {
            add(new Connection.Closed(name, one, other));
        } else {
            seat(name + "-one", one);
            seat(name + "-other", other);
            mesh(name + "-one", name + "-other", MeshKind.EXTERNAL, Optional.empty(), Optional.empty());
        }
    }

    /** One of three members to what is there, one perhaps held, two perhaps tied, what is left to lead on. */
    private void joinUp(String from, List<String> members) {
        List<String> left = new ArrayList<>(members);
        add(new Connection.Closed(members.get(0) + "-in", from, left.remove(random.nextInt(left.size()))));
        int fate = random.nextInt(5);
        if (fate < 2) {
            add(new Connection.Held(left.remove(random.nextInt(left.size())), "case"));
        } else if (fate == 2) {
            add(new Connection.Closed(members.get(0) + "-lock", left.get(0), left.get(1)));
        } else if (fate == 3) {
            add(new Connection.Closed(members.get(0) + "-back", any(ends, random), left.remove(0)));
        }
        ends.addAll(left);
    }

    private void mesh(String first, String second, MeshKind kind, Optional<String> carrier, Optional<String> crossing) {
        int firstTeeth = teeth();
        int secondTeeth = kind == MeshKind.INTERNAL ? firstTeeth + teeth() : teeth();
        add(new Connection.Meshing(new Mesh(first, second, kind), firstTeeth, secondTeeth, carrier, crossing));
    }

    private void seat(String gear, String shaft) {
        add(new Connection.Seated(gear, shaft, gear));
    }

    private String end(String name) {
        ends.add(name);
        return name;
    }

    private MeshKind outerOrInner() {
        return random.nextBoolean() ? MeshKind.EXTERNAL : MeshKind.INTERNAL;
    }

    private int teeth() {
        return random.nextInt(11, 60);
    }

    private void add(Connection connection) {
        connections.add(connection);
        bodies.addAll(connection.equation().coefficients().keySet());
    }

    private static String any(List<String> of, SplittableRandom random) {
        return of.get(random.nextInt(of.size()));
    }
}
