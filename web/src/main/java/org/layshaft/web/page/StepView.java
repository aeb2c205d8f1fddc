package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.web.desk.Wording;

/**
 * A step to one gear, or to neutral.
 *
 * @param verdict in words
 * @param current whether it is drawn
 */
record StepView(String name, String href, MarkView mark, String verdict, boolean current) {
    static List<StepView> all(Scene scene) {
        WhatIf whatIf = scene.answer().whatIf();
        List<StepView> steps = new ArrayList<>();
        steps.add(new StepView(
                "neutral",
                scene.address().inGear(Address.NEUTRAL).link() + "#sheet",
                MarkView.of(whatIf.neutral().verdict()),
                Wording.ofNeutral(whatIf.neutral()),
                scene.inNeutral()));
        for (GearVerdict gear : whatIf.gears()) {
            steps.add(new StepView(
                    gear.gear(),
                    scene.address().inGear(gear.gear()).link() + "#sheet",
                    MarkView.of(gear.verdict()),
                    Wording.ofGear(gear.verdict()),
                    scene.gear().filter(gear::equals).isPresent()));
        }
        return steps;
    }
}
