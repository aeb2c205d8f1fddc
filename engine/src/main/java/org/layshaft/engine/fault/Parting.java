package org.layshaft.engine.fault;

import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/**
 * What no longer joins where a part has parted, or lets no drive through: a half-shaft by one of its joints, a
 * differential by its pinions, a clutch inside the box, an output by its propeller shaft.
 */
public final class Parting {
    private Parting() {}

    /** Id of the half-shaft, joint, differential, clutch or output shaft. */
    public static String of(Layout layout, Part part) {
        return part instanceof Fitting fitting ? fitting.of().orElseThrow() : part.id();
    }

    /** Whether the equations know what joined there; if not, whatever turns, nothing arrives behind it. */
    public static boolean isInTheEquations(Layout layout, Part part) {
        String gone = of(layout, part);
        return layout.find(HalfShaft.class, gone).isPresent()
                || layout.find(Joint.class, gone).isPresent()
                || layout.find(Differential.class, gone).isPresent()
                || isInner(part)
                || !(part instanceof Clutch) && layout.outputs().size() > 1;
    }

    private static boolean isInner(Part part) {
        return part instanceof Clutch clutch && clutch.drivenBy().isPresent();
    }
}
