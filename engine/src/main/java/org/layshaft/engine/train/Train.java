package org.layshaft.engine.train;

import java.util.List;

/**
 * One stance of one box, ready to be solved.
 *
 * @param bodies ids of everything that can turn, in the order of the layout
 * @param connections the equations between them
 * @param input the body that the clutch drives
 * @param outputs the bodies that the load is on: the output shaft, or both wheels, each taking an equal share
 */
public record Train(List<String> bodies, List<Connection> connections, String input, List<String> outputs) {
    /** The body that all outputs are tied to, where there are several, and that the load is on. */
    public static final String ROAD = "road";

    public Train {
        bodies = List.copyOf(bodies);
        connections = List.copyOf(connections);
        outputs = List.copyOf(outputs);
    }
}
