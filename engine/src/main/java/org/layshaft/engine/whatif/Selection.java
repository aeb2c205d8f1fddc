package org.layshaft.engine.whatif;

import java.util.List;
import org.layshaft.engine.api.Box;

/**
 * What the levers do to select something.
 *
 * @param at what is selected, by name
 * @param pushes the rails that are pushed, and the clutches that are closed
 */
record Selection(String at, List<Box.Push> pushes) {
    Selection {
        pushes = List.copyOf(pushes);
    }
}
