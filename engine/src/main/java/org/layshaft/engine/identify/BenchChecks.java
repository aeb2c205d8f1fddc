package org.layshaft.engine.identify;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;
import org.layshaft.kb.layout.GearForm;

/** What measurements of one gear cannot be beside each other. */
final class BenchChecks {
    private BenchChecks() {}

    static void object(GearForm form, OptionalInt teeth, List<Measurement> measurements, Objections objections) {
        OptionalDouble tip = first(measurements, TipDiameter.class);
        OptionalDouble root = first(measurements, RootDiameter.class);
        if (tip.isPresent() && root.isPresent()) {
            boolean internal = form == GearForm.INTERNAL;
            objections.unless(
                    internal ? tip.getAsDouble() < root.getAsDouble() : tip.getAsDouble() > root.getAsDouble(),
                    "The tip diameter is %s mm and the root diameter %s mm. Of %s teeth the tip diameter is the %s: check which is which.",
                    Shown.decimal(tip.getAsDouble()),
                    Shown.decimal(root.getAsDouble()),
                    form.word(),
                    internal ? "smaller" : "larger");
        }
        for (Measurement measurement : measurements) {
            if (measurement instanceof SpanMeasure span) {
                span(form, teeth, span, tip, measurements, objections);
            } else if (measurement instanceof CentreDistance centre && teeth.isPresent()) {
                centre(form, teeth.getAsInt(), centre, objections);
            } else if (measurement instanceof PinMeasure pins) {
                objections.unless(
                        pins.pinMm() > 0,
                        "The pins are %s mm thick. It must be more than 0.",
                        Shown.decimal(pins.pinMm()));
            }
        }
    }

    private static void span(
            GearForm form,
            OptionalInt teeth,
            SpanMeasure span,
            OptionalDouble tip,
            List<Measurement> measurements,
            Objections objections) {
        boolean helical =
                measurements.stream().anyMatch(other -> other instanceof RolledHelix rolled && !rolled.isStraight());
        objections
                .unless(
                        span.acrossTeeth() >= 1 && span.acrossTeeth() <= teeth.orElse(Integer.MAX_VALUE) / 2,
                        "A span over %s teeth is stated. On this gear it must be from 1 to %s.",
                        span.acrossTeeth(),
                        teeth.orElse(Integer.MAX_VALUE) / 2)
                .unless(
                        form == GearForm.INTERNAL || span.measured() < tip.orElse(Double.POSITIVE_INFINITY),
                        "The span over %s teeth is %s mm, the tip diameter %s mm. No span is longer than that: check both.",
                        span.acrossTeeth(),
                        Shown.decimal(span.measured()),
                        Shown.decimal(tip.orElse(0)))
                .unless(
                        form == GearForm.EXTERNAL || !helical,
                        "A span over %s teeth is stated for helical internal teeth. There it cannot be measured: measure between balls.",
                        span.acrossTeeth());
    }

    private static void centre(GearForm form, int teeth, CentreDistance centre, Objections objections) {
        objections
                .unless(
                        form == GearForm.EXTERNAL || centre.mateForm() == GearForm.EXTERNAL,
                        "Gear and mate are both internal. At least one must have its teeth outside.")
                .unless(
                        form != GearForm.INTERNAL || teeth > centre.mateTeeth(),
                        "The ring has %s teeth, its mate %s. The ring must have more.",
                        teeth,
                        centre.mateTeeth())
                .unless(
                        centre.mateForm() != GearForm.INTERNAL || centre.mateTeeth() > teeth,
                        "The gear has %s teeth, the ring that it runs in %s. The ring must have more.",
                        teeth,
                        centre.mateTeeth());
    }

    private static OptionalDouble first(List<Measurement> measurements, Class<? extends Measurement> kind) {
        return measurements.stream()
                .filter(kind::isInstance)
                .mapToDouble(Measurement::measured)
                .findFirst();
    }
}
