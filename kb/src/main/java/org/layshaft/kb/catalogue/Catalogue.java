package org.layshaft.kb.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that the sound packs tell of parts. Immutable.
 *
 * @param parts by number
 * @param sets by number
 * @param builds by id
 */
public record Catalogue(
        Map<String, CataloguePart> parts,
        Map<String, PartSet> sets,
        Map<String, Build> builds,
        List<Supersession> supersessions,
        List<Interchange> interchanges) {
    /** Nothing is known. */
    public static final Catalogue EMPTY = new Catalogue(Map.of(), Map.of(), Map.of(), List.of(), List.of());

    public Catalogue {
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        sets = Collections.unmodifiableMap(new LinkedHashMap<>(sets));
        builds = Collections.unmodifiableMap(new LinkedHashMap<>(builds));
        supersessions = List.copyOf(supersessions);
        interchanges = List.copyOf(interchanges);
    }

    public Optional<CataloguePart> part(String number) {
        return Optional.ofNullable(parts.get(number));
    }

    /** The set of this number; for the number of a part, that part alone. */
    public Optional<PartSet> set(String number) {
        return Optional.ofNullable(sets.get(number)).or(() -> part(number).map(PartSet::of));
    }
}
