package org.layshaft.kb.parts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Named;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.typed.Naming;
import org.layshaft.kb.typed.Reference;

/** Takes down parts in their order, each with its name. Not thread-safe. */
final class PartLedger {
    private final Map<Reference, Naming> names;
    private final List<BuiltPart> parts = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();

    /** @param names names that go before those typed at the part */
    PartLedger(Map<Reference, Naming> names) {
        this.names = names;
    }

    void add(Part part, String pointer) {
        parts.add(new BuiltPart(part, pointer));
        ids.add(part.id());
    }

    boolean has(String id) {
        return ids.contains(id);
    }

    /** The name of a derived part. */
    Named named(String id, String byDefault) {
        return named(id, byDefault, Optional.empty());
    }

    Named named(String id, String byDefault, Naming typed) {
        return named(id, byDefault, Optional.of(typed));
    }

    private Named named(String id, String byDefault, Optional<Naming> typed) {
        Optional<Naming> apart = names.entrySet().stream()
                .filter(entry -> entry.getKey().id().equals(id))
                .map(Map.Entry::getValue)
                .findFirst();
        String name = apart.flatMap(Naming::name)
                .or(() -> typed.flatMap(Naming::name))
                .orElse(byDefault);
        List<String> also = Stream.of(apart, typed)
                .flatMap(Optional::stream)
                .flatMap(naming -> naming.also().stream())
                .distinct()
                .toList();
        return new Named(id, name, also);
    }

    /** A part of one type, with the place it stands at. */
    record Placed<P extends Part>(P part, String pointer) {}

    /** Those taken down so far. */
    <P extends Part> Stream<Placed<P>> all(Class<P> type) {
        return List.copyOf(parts).stream()
                .filter(built -> type.isInstance(built.part()))
                .map(built -> new Placed<>(type.cast(built.part()), built.pointer()));
    }

    List<BuiltPart> parts() {
        return parts;
    }

    Map<String, Part> byId() {
        Map<String, Part> byId = new LinkedHashMap<>();
        parts.forEach(built -> byId.putIfAbsent(built.part().id(), built.part()));
        return byId;
    }
}
