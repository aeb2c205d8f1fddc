package org.layshaft.engine.symptom;

import java.util.HashMap;
import java.util.Map;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;

/**
 * A bend to the left, as tight as one turns into a side street: each wheel rolls its own way, and each axle behind or
 * before another too. How tight makes no difference to what must turn unlike.
 */
final class Bend {
    private static final Fraction BETWEEN_WHEELS = Fraction.of(1).over(Fraction.of(10));
    private static final Fraction BETWEEN_AXLES = Fraction.of(1).over(Fraction.of(30));

    private Bend() {}

    /** Turns of each output for one turn of the road; empty where one output alone leaves nothing to turn unlike. */
    static Map<String, Fraction> of(Layout layout) {
        Map<String, Fraction> turns = new HashMap<>();
        if (layout.outputs().size() < 2) {
            return turns;
        }
        Map<String, Integer> axles = new HashMap<>();
        for (String output : layout.outputs()) {
            HalfShaft halfShaft = layout.find(HalfShaft.class, output).orElse(null);
            String axle = halfShaft == null ? output : halfShaft.differential();
            boolean isFirst = !axles.containsKey(axle);
            int number = axles.computeIfAbsent(axle, another -> axles.size());
            Fraction middle = Fraction.ONE.plus(BETWEEN_AXLES.times(Fraction.of(number)));
            if (halfShaft == null) {
                turns.put(output, middle);
            } else {
                turns.put(halfShaft.wheel(), isFirst ? middle.minus(BETWEEN_WHEELS) : middle.plus(BETWEEN_WHEELS));
            }
        }
        return turns;
    }
}
