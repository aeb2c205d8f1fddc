package org.layshaft.kb.check;

import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;

/** Straight-cut gears that are said to wind left or right. */
final class HandsWithoutHelix implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        layout.gears()
                .filter(gear -> gear.hand().isPresent() && gear.helixDeg() == 0)
                .forEach(gear -> report.doubtful(
                        Pointers.child(gear.pointer(), "hand"),
                        "The gear '%s' has a hand, but is straight cut.".formatted(gear.id()),
                        gear.hand().get().word(),
                        "Type its 'helix_deg', or take the 'hand' out."));
    }
}
