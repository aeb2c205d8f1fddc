package org.layshaft.kb.layout;

import java.util.List;

/**
 * Which rail the lever's finger can reach.
 *
 * @param planes ids of the rails in the order in which the lever passes them
 */
public record Gate(List<String> planes) {
    public Gate {
        planes = List.copyOf(planes);
    }
}
