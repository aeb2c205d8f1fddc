package org.layshaft.web.page;

import java.util.List;
import org.layshaft.web.desk.SwapLine;
import org.layshaft.web.page.FitFormView.ChoiceView;

/**
 * The page of changes.
 *
 * @param boxes every layout, and every build whose parts are known
 * @param heading what is changed, in words; null where nothing is answered
 * @param says in sentences
 * @param serving of the set that was put in; null where none was
 * @param gears the figures, gear by gear
 * @param untold why what cannot be told cannot
 * @param api where the same stands as JSON
 */
record SwapView(
        List<ChoiceView> boxes,
        SwapFormView form,
        List<String> trouble,
        String heading,
        List<String> says,
        ServingView serving,
        List<GearView> gears,
        List<String> untold,
        List<String> cautions,
        String api) {

    /** What was typed; empty for nothing. */
    record SwapFormView(
            String serial,
            String set,
            String place,
            String tyre,
            String wasTyre,
            String axle,
            String drive,
            String cruise,
            String shift,
            String torque) {}

    /** The figures of one gear; those of the whole where it has no name. */
    record GearView(String name, List<SwapLine> lines) {}

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean hasUntold() {
        return !untold.isEmpty();
    }
}
