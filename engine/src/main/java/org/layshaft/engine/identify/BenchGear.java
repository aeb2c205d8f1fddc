package org.layshaft.engine.identify;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.GearForm;

/**
 * An unknown gear on the bench.
 *
 * @param teeth counted, where they can be
 * @throws org.layshaft.engine.stated.ImpossibleFactsException where the measurements are impossible in themselves
 */
public record BenchGear(GearForm form, OptionalInt teeth, List<Measurement> measurements) {

    public BenchGear {
        measurements = List.copyOf(measurements);
        Objections objections = new Objections()
                .unless(
                        form == GearForm.EXTERNAL || form == GearForm.INTERNAL,
                        "The form is %s. Teeth on a cylinder can be identified: external or internal.",
                        form.word());
        teeth.ifPresent(counted ->
                objections.unless(counted >= 5, "The number of teeth is %s. It must be at least 5.", counted));
        measurements.forEach(measurement -> measurement.object(objections));
        BenchChecks.object(form, teeth, measurements, objections);
        Set<String> told = new HashSet<>();
        for (Measurement measurement : measurements) {
            objections.unless(
                    told.add(measurement.what()),
                    "Measured twice: %s. State it once, with an allowance that covers both.",
                    measurement.what());
        }
        objections.refuse();
    }

    /** The standard gears that it may be; cannot be told without the helix and something that tells the size. */
    public Telling<Identification> identify() {
        Optional<RolledHelix> helix = helix();
        Telling<RolledHelix> helixTold = Telling.of(helix, "the helix angle (0 where the teeth are straight)");
        Telling<Long> sizeTold = measurements.size() > (helix.isPresent() ? 1 : 0)
                ? Telling.told(measurements.stream().count())
                : Telling.missing("a diameter, a span, a measure over pins or a centre distance");
        return helixTold.with(sizeTold, (ignored, alsoIgnored) -> Search.identify(this));
    }

    Optional<RolledHelix> helix() {
        return measurements.stream()
                .filter(RolledHelix.class::isInstance)
                .map(RolledHelix.class::cast)
                .findFirst();
    }

    /** The same gear as if one thing had not been measured. */
    BenchGear without(Measurement left) {
        return new BenchGear(
                form,
                teeth,
                measurements.stream()
                        .filter(measurement -> !measurement.equals(left))
                        .toList());
    }
}
