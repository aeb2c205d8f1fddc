package org.layshaft.engine.symptom;

import java.util.List;
import org.layshaft.engine.fault.Served;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.NoticeLine;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/**
 * One fault with everything told, ready to be asked what it shows.
 *
 * @param lines of the mode, those that apply
 */
record Told(
        Fault fault,
        FailureMode mode,
        Part part,
        Effects effects,
        List<Served> served,
        Concerned concerned,
        List<NoticeLine> lines) {

    static Told of(Layout layout, Fault fault, FailureMode mode) {
        Part part = layout.the(Part.class, fault.part());
        return new Told(
                fault,
                mode,
                part,
                EffectsOf.fault(layout, fault, mode),
                Served.by(layout, part),
                Concerned.of(layout, part),
                mode.noticed().stream()
                        .filter(line -> line.appliesTo(fault.told()))
                        .toList());
    }
}
