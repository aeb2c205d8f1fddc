package org.layshaft.engine.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Shaft;

/** What turns, once in each turn: a shaft with what is fixed on it, a gear by itself, a half-shaft with its wheel. */
record TurningSources(Rates rates, Names names) {

    Stream<Source> all() {
        return RigidGroups.of(rates).entrySet().stream()
                .flatMap(group -> of(group.getKey(), group.getValue()).stream());
    }

    /** Empty for what stands, and for what nothing fixes the speed of. */
    private Optional<Source> of(String body, List<String> fixedOnIt) {
        return rates.inItsPlace(body).filter(turns -> !turns.isZero()).map(turns -> source(body, fixedOnIt, turns));
    }

    private Source source(String body, List<String> fixedOnIt, Fraction turns) {
        List<String> parts = new ArrayList<>(List.of(body));
        parts.addAll(fixedOnIt);
        String against = rates.carrierOf(body)
                .map(carrier -> " against " + names.the(carrier))
                .orElse("");
        String what = "%s%s turns once%s".formatted(names.the(body), with(body, fixedOnIt), against);
        String how = "%s of %s%s".formatted(Counted.turns(turns), names.the(body), against);
        boolean loaded = parts.stream().anyMatch(rates.carrying()::contains);
        return new Source(kind(body), parts, what, how, Order.exactly(turns), loaded, List.of());
    }

    private String with(String body, List<String> fixedOnIt) {
        if (fixedOnIt.isEmpty()) {
            return "";
        }
        String joints = rates.layout().find(HalfShaft.class, body).isPresent() ? " and its joints" : "";
        return "%s, with %s,".formatted(joints, names.list(fixedOnIt));
    }

    private SourceKind kind(String body) {
        Map<Class<?>, SourceKind> kinds = Map.of(
                Shaft.class, SourceKind.SHAFT,
                Gear.class, SourceKind.GEAR,
                Differential.class, SourceKind.DIFFERENTIAL,
                HalfShaft.class, SourceKind.WHEEL);
        return kinds.getOrDefault(rates.layout().parts().get(body).getClass(), SourceKind.SHAFT);
    }
}
