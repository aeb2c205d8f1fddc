package org.layshaft.kb.check;

import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** Shafts that nothing but bearings sits on. */
final class EmptyShafts implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedShaft shaft : layout.shafts()) {
            if (shaft.workingItems().isEmpty()) {
                report.broken(
                        shaft.pointer(),
                        "No gear or sleeve sits on the shaft '%s'.".formatted(shaft.id()),
                        shaft.id(),
                        "Type under 'along' what sits on it, or take the shaft out.");
            }
        }
    }
}
