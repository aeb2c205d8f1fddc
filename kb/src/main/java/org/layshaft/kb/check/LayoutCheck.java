package org.layshaft.kb.check;

import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;

/** Looks at one subject of a layout. */
interface LayoutCheck {

    /**
     * Tells what is wrong with it.
     *
     * @param layout as typed, which may lack anything
     * @param built the same with its derived parts
     */
    void run(TypedLayout layout, BuiltLayout built, Report report);
}
