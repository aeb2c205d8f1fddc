package org.layshaft.engine.suspects;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.words.Names;

/** Whether gears that are affected have a way of the lever in common, so that the cause may well lie outside the box. */
final class Stroke {
    private Stroke() {}

    /** Why the cause may lie outside; empty where it is one gear, or all, or they have nothing in common. */
    static Optional<String> sharedBy(Evidence evidence, Box box, Names names) {
        Set<String> affected = new LinkedHashSet<>();
        evidence.seen().forEach(observation -> affected.addAll(observation.gears()));
        List<Box.Push> pushes = box.gears().stream()
                .filter(gear -> affected.contains(gear.name()))
                .flatMap(gear -> gear.first().stream())
                .toList();
        if (affected.size() < 2 || affected.size() == box.gears().size() || pushes.size() < affected.size()) {
            return Optional.empty();
        }
        String gears = names.gear(String.join("+", affected));
        if (areOne(pushes, Box.Push::rail)) {
            return Optional.of("%s lie in one plane of the gate: look at lever and linkage before the box is opened."
                    .formatted(gears));
        }
        return areOne(pushes, Box.Push::side)
                ? Optional.of("%s share one stroke of the lever: look at lever and linkage before the box is opened."
                        .formatted(gears))
                : Optional.empty();
    }

    private static boolean areOne(List<Box.Push> pushes, Function<Box.Push, Object> of) {
        return pushes.stream().map(of).collect(Collectors.toSet()).size() == 1;
    }
}
