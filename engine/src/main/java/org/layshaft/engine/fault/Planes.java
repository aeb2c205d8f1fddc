package org.layshaft.engine.fault;

import java.util.List;
import org.layshaft.kb.layout.Layout;

/** The ends of the gate. */
public final class Planes {
    private Planes() {}

    /**
     * Id of the rail that the lever passes first, or last.
     *
     * @param end {@code first} or {@code last}
     */
    public static String at(Layout layout, String end) {
        List<String> planes = layout.gate().planes();
        return planes.get(end.equals("first") ? 0 : planes.size() - 1);
    }
}
