package org.layshaft.engine.fault;

import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** What no longer joins where a part has parted: a half-shaft by one of its joints, an output by its propeller shaft. */
public final class Parting {
    private Parting() {}

    /** Id of the half-shaft, joint or output shaft. */
    public static String of(Layout layout, Part part) {
        return part instanceof Fitting fitting ? fitting.of().orElseThrow() : part.id();
    }
}
