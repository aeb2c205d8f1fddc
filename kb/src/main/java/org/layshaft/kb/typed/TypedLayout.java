package org.layshaft.kb.typed;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A whole layout as typed, defaults filled in where the format gives any.
 *
 * @param input the shaft that the clutch drives
 * @param output the shaft that the drive leaves by, where there is no differential
 * @param names names for parts by id, typed apart from the part
 */
public record TypedLayout(
        Reference id,
        String name,
        String summary,
        Reference input,
        Reference output,
        List<TypedShaft> shafts,
        Optional<TypedDifferential> differential,
        TypedSelector selector,
        Optional<TypedClutch> clutch,
        Map<String, BigDecimal> printed,
        Map<Reference, Naming> names) {
    public TypedLayout {
        shafts = List.copyOf(shafts);
        printed = Collections.unmodifiableMap(new LinkedHashMap<>(printed));
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
    }

    /** Every gear: along the shafts, on the outside of sleeves, and the ring gear. */
    public Stream<TypedGear> gears() {
        Stream<TypedGear> along =
                shafts.stream().flatMap(shaft -> shaft.along().stream()).flatMap(TypedLayout::gearsOf);
        return Stream.concat(along, differential.map(TypedDifferential::ringGear).stream());
    }

    public Optional<TypedGear> gear(String id) {
        return gears().filter(gear -> gear.id().equals(id)).findFirst();
    }

    public Optional<TypedShaft> shaft(String id) {
        return shafts.stream().filter(shaft -> shaft.id().equals(id)).findFirst();
    }

    /** How many items, meshes, rails and names were typed. */
    public int size() {
        int along = shafts.stream().mapToInt(shaft -> 1 + shaft.along().size()).sum();
        int moves = selector.rails().stream()
                .mapToInt(rail -> 1 + rail.moves().size())
                .sum();
        return along + meshes().size() + moves + selector.gate().size() + names.size();
    }

    /** Sleeves and sliding gears, in the order of the file. */
    public List<TypedMember> members() {
        return MembersOnShafts.of(shafts);
    }

    /** Every mesh typed anywhere, in the order of the file; one typed twice stands twice. */
    public List<TypedMesh> meshes() {
        Stream<TypedMesh> always = gears().flatMap(gear -> meshes(gear.id(), gear.meshes()));
        Stream<TypedMesh> slid = members().stream()
                .flatMap(member -> member.sides().values().stream()
                        .filter(TypedSide.Meshes.class::isInstance)
                        .flatMap(side -> meshes(member.meshingGear(), ((TypedSide.Meshes) side).gears())));
        return Stream.concat(always, slid).toList();
    }

    private static Stream<TypedMesh> meshes(String gear, List<Reference> others) {
        return others.stream().map(other -> new TypedMesh(gear, other.id(), other.pointer()));
    }

    /** The shaft that an item stands on; the rim of a sleeve stands on the sleeve's. Empty for a ring gear. */
    public Optional<TypedShaft> shaftOf(String item) {
        return shafts.stream()
                .filter(shaft -> shaft.along().stream()
                        .anyMatch(along -> along.id().equals(item)
                                || gearsOf(along).anyMatch(gear -> gear.id().equals(item))))
                .findFirst();
    }

    private static Stream<TypedGear> gearsOf(TypedItem item) {
        if (item instanceof TypedGear gear) {
            return Stream.of(gear);
        }
        return item instanceof TypedSleeve sleeve ? sleeve.rim().stream() : Stream.empty();
    }
}
