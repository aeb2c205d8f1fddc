package org.layshaft.engine.fit;

import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.layout.Layout;

/** A box of one build, with what stands in it. */
public record BuiltBox(Build build, Fitted fitted) {
    public Layout layout() {
        return fitted.layout();
    }
}
