package org.layshaft.kb.check;

import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedLayout;

/** Limited slip that limits nothing: no torque held between the sides, and no more for one than for the other. */
final class LimitedSlips implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedDifferential differential : layout.differentials()) {
            differential
                    .limitedSlip()
                    .filter(slip ->
                            slip.preloadNm().orElse(0) == 0 && slip.biasRatio().orElse(1) == 1)
                    .ifPresent(slip -> report.doubtful(
                            Pointers.child(differential.pointer(), "limited_slip"),
                            "The limited slip of '%s' limits nothing: it is an open differential."
                                    .formatted(differential.id()),
                            differential.id(),
                            "Type a 'preload_nm' above 0 or a 'bias_ratio' above 1, or leave 'limited_slip' out."));
        }
    }
}
