package org.layshaft.engine.symptom;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.engine.fault.Served;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.NoticeLine;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/**
 * One fault with everything told, ready to be asked what it shows.
 *
 * @param takes the gears that it leaves without drive when nothing else is wrong
 * @param lines of the mode, those that apply
 */
record Told(
        Fault fault,
        FailureMode mode,
        Part part,
        Effects effects,
        List<Served> served,
        Concerned concerned,
        Set<String> takes,
        List<NoticeLine> lines) {

    static Told of(Sound sound, Fault fault, FailureMode mode) {
        Layout layout = sound.layout();
        Part part = layout.the(Part.class, fault.part());
        Effects effects = EffectsOf.fault(layout, fault, mode);
        return new Told(
                fault,
                mode,
                part,
                effects,
                Served.by(layout, part),
                Concerned.of(layout, part),
                takes(sound, effects),
                mode.noticed().stream()
                        .filter(line -> line.appliesTo(fault.told()))
                        .toList());
    }

    private static Set<String> takes(Sound sound, Effects effects) {
        if (effects.changeNothing()) {
            return Set.of();
        }
        World alone = new World(sound, effects);
        return sound.gearNames().stream().filter(alone::isWithoutDrive).collect(Collectors.toUnmodifiableSet());
    }
}
