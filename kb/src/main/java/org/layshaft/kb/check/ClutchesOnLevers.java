package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.Map;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedLever;

/** A clutch inside the box is closed by one lever. */
final class ClutchesOnLevers implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Map<String, String> first = new HashMap<>();
        for (TypedLever lever : layout.levers()) {
            for (Reference clutch : lever.clutches()) {
                String before = first.putIfAbsent(clutch.id(), lever.id());
                if (before != null) {
                    report.broken(
                            clutch.pointer(),
                            "The clutch '%s' is closed by two levers, '%s' and '%s'."
                                    .formatted(clutch.id(), before, lever.id()),
                            clutch.id(),
                            "Leave it to one of the two.");
                }
            }
        }
    }
}
