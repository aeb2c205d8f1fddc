package org.layshaft.engine.swap;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.teeth.InputTorque;
import org.layshaft.engine.teeth.Turn;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.pack.PackReader;

/** Gears for other gears, for tests. */
final class Swaps {
    static final Reasoner REASONER = Reasoners.standard(Boxes.knowledge());
    static final Running HUNDRED_NM = new Running(
            Optional.of(Fraction.of(90)),
            Optional.of(Fraction.of(3000)),
            Optional.of(new InputTorque(Fraction.of(100), Turn.CLOCKWISE)));

    private Swaps() {}

    /** The gear of the layout with other teeth and nothing else changed. */
    static Gear teeth(Layout layout, String id, int teeth) {
        return layout.gear(id).withTeeth(teeth);
    }

    static Gear hand(Gear gear, Hand hand) {
        return new Gear(
                gear.named(),
                gear.carrier(),
                gear.seat(),
                gear.form(),
                gear.teeth(),
                gear.moduleMm(),
                gear.helixDeg(),
                Optional.of(hand),
                gear.pressureAngleDeg());
    }

    static Gear module(Gear gear, double moduleMm) {
        return new Gear(
                gear.named(),
                gear.carrier(),
                gear.seat(),
                gear.form(),
                gear.teeth(),
                OptionalDouble.of(moduleMm),
                gear.helixDeg(),
                gear.hand(),
                gear.pressureAngleDeg());
    }

    static Change change(Layout layout, Map<String, Integer> teeth) {
        Change change = Change.NONE;
        for (Map.Entry<String, Integer> gear : teeth.entrySet()) {
            change = change.with(teeth(layout, gear.getKey(), gear.getValue()));
        }
        return change;
    }

    static Comparison compare(String layout, Map<String, Integer> teeth) {
        return Comparison.of(Boxes.the(layout), change(Boxes.the(layout), teeth), HUNDRED_NM, REASONER);
    }

    /** The same layout in a vehicle of which only the place is known where the speed is read. */
    static Layout reading(Layout layout, Road.SpeedRead place) {
        Road none = Road.NOTHING;
        Road road = new Road(
                none.tyre(),
                none.rollingCircumferenceMm(),
                none.dynamicFactor(),
                none.axleRatio(),
                none.efficiency(),
                none.massKg(),
                none.rollingCoefficient(),
                none.dragAreaM2(),
                none.airDensityKgM3(),
                none.engine(),
                Optional.of(place));
        return new Layout(
                layout.id(),
                layout.name(),
                layout.summary(),
                layout.input(),
                layout.outputs(),
                layout.takeOffs(),
                layout.meshes(),
                layout.members(),
                layout.gate(),
                layout.levers(),
                layout.printedRatios(),
                Optional.of(road),
                layout.parts());
    }

    /** The layout of the file in Saltmarsh's pack, with other teeth typed into it and nothing printed. */
    static Layout retyped(String id, Map<String, Integer> teeth, Path folder) throws IOException {
        String text;
        try (var file = Swaps.class.getResourceAsStream("/layshaft-pack/layouts/" + id + ".json")) {
            text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (Map.Entry<String, Integer> gear : teeth.entrySet()) {
            String other = text.replaceFirst(
                    "(\"gear\": \"%s\",[^}]*?\"teeth\": )[0-9]+".formatted(gear.getKey()), "$1" + gear.getValue());
            if (other.equals(text)) {
                throw new IllegalArgumentException("no other teeth for " + gear);
            }
            text = other;
        }
        Path file = folder.resolve(id + ".json");
        Files.writeString(file, text.replaceFirst("(?s),\\s*\"printed\": \\{[^}]*\\}", ""));
        var reading = PackReader.check(List.of(file));
        return reading.knowledge()
                .layout(id)
                .orElseThrow(() -> new IllegalStateException(reading.findings().toString()));
    }
}
