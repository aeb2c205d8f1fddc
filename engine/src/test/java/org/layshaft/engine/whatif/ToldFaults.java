package org.layshaft.engine.whatif;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.engine.fault.Possibilities;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** Every single fault that the trade knows of a layout, with everything told. */
final class ToldFaults {
    private ToldFaults() {}

    static List<Fault> of(Layout layout) {
        Possibilities possibilities = new Possibilities(layout);
        return layout.all(Part.class)
                .flatMap(part ->
                        Bench.KNOWLEDGE.failureModesOf(part).stream().flatMap(mode -> told(possibilities, part, mode)))
                .toList();
    }

    private static Stream<Fault> told(Possibilities possibilities, Part part, FailureMode mode) {
        boolean canBeTold = mode.unlessTold().keySet().stream()
                .noneMatch(
                        heading -> possibilities.valuesOf(part, mode, heading).isEmpty());
        return canBeTold
                ? possibilities.of(List.of(Fault.of(part.id(), mode.name())), List.of(mode)).stream()
                        .map(way -> way.get(0))
                : Stream.of();
    }
}
