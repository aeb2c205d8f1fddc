package org.layshaft.engine.identify;

import java.util.OptionalDouble;
import org.layshaft.engine.involute.InvoluteGear;

/** Base tangent length over so many teeth, or spaces of straight internal teeth; two of them tell the base pitch. */
public record SpanMeasure(int acrossTeeth, double measured, double allowance) implements Measurement {

    /** With an allowance for a plate micrometer. */
    public static SpanMeasure of(int acrossTeeth, double mm) {
        return new SpanMeasure(acrossTeeth, mm, 0.03);
    }

    @Override
    public String what() {
        return "the span over " + acrossTeeth + " teeth";
    }

    @Override
    public OptionalDouble computed(InvoluteGear gear) {
        return OptionalDouble.of(gear.spanMm(acrossTeeth));
    }
}
