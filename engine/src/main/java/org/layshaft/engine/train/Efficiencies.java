package org.layshaft.engine.train;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.MeshKind;

/**
 * What part of the power each mesh passes on, above 0 and at most 1. What is stated for one mesh goes before what is
 * stated for its kind. A mesh for which nothing is stated has none, and what rests on it cannot be told.
 *
 * @param byMesh by id of the connection: {@code mesh pinion/ring-gear}
 */
public record Efficiencies(Map<MeshKind, Fraction> byKind, Map<String, Fraction> byMesh) {
    public Efficiencies {
        byKind = Map.copyOf(byKind);
        byMesh = Map.copyOf(byMesh);
        byKind.forEach(Efficiencies::require);
        byMesh.forEach(Efficiencies::require);
    }

    /** Every mesh of every kind alike. */
    public static Efficiencies ofEveryMesh(Fraction efficiency) {
        Map<MeshKind, Fraction> byKind = new EnumMap<>(MeshKind.class);
        for (MeshKind kind : MeshKind.values()) {
            byKind.put(kind, efficiency);
        }
        return new Efficiencies(byKind, Map.of());
    }

    Optional<Fraction> of(Connection.Meshing meshing) {
        return Optional.ofNullable(
                byMesh.getOrDefault(meshing.id(), byKind.get(meshing.mesh().kind())));
    }

    private static void require(Object what, Fraction efficiency) {
        if (efficiency.signum() <= 0 || efficiency.compareTo(Fraction.ONE) > 0) {
            throw new IllegalArgumentException(
                    "The efficiency of %s is %s; it must be above 0 and at most 1.".formatted(what, efficiency));
        }
    }
}
