package org.layshaft.kb.typed;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.layout.MeshKind;

/**
 * A whole layout as typed, defaults filled in where the format gives any.
 *
 * @param input the shaft that the clutch drives
 * @param outputs what the drive leaves by, as typed; empty where that goes without saying
 * @param takeOffs the shafts that it leaves by for a power take-off
 * @param selector what the gear lever works
 * @param levers the other levers
 * @param road what is typed of the vehicle
 * @param names names for parts by id, typed apart from the part
 * @param units the layouts that it is joined from and that are still to be put in their places; empty once they are
 * @param joins what makes shafts of different units turn as one
 */
public record TypedLayout(
        Reference id,
        String name,
        String summary,
        Reference input,
        List<Reference> outputs,
        List<Reference> takeOffs,
        List<TypedShaft> shafts,
        List<TypedDifferential> differentials,
        TypedSelector selector,
        List<TypedLever> levers,
        Optional<TypedClutch> clutch,
        Map<String, BigDecimal> printed,
        Optional<TypedRoad> road,
        Map<Reference, Naming> names,
        List<TypedUnit> units,
        List<TypedJoin> joins) {
    private static final String OUTPUT = "output";

    public TypedLayout {
        outputs = List.copyOf(outputs);
        takeOffs = List.copyOf(takeOffs);
        shafts = List.copyOf(shafts);
        differentials = List.copyOf(differentials);
        levers = List.copyOf(levers);
        printed = Collections.unmodifiableMap(new LinkedHashMap<>(printed));
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
        units = List.copyOf(units);
        joins = List.copyOf(joins);
    }

    /** The same with these names for parts, in place of those it had. */
    public TypedLayout withNames(Map<Reference, Naming> others) {
        return new TypedLayout(
                id,
                name,
                summary,
                input,
                outputs,
                takeOffs,
                shafts,
                differentials,
                selector,
                levers,
                clutch,
                printed,
                road,
                others,
                units,
                joins);
    }

    /** Every gear: along the shafts, on the outside of sleeves, and the ring gear. */
    public Stream<TypedGear> gears() {
        Stream<TypedGear> along =
                shafts.stream().flatMap(shaft -> shaft.along().stream()).flatMap(TypedLayout::gearsOf);
        return Stream.concat(along, differentials.stream().flatMap(differential -> differential.ringGear().stream()));
    }

    /** What the gear lever works first, then what the others do. */
    public List<TypedSelector> selectors() {
        return Stream.concat(Stream.of(selector), levers.stream().map(TypedLever::selector))
                .toList();
    }

    /** The rails of every lever. */
    public List<TypedRail> rails() {
        return selectors().stream().flatMap(each -> each.rails().stream()).toList();
    }

    /**
     * Ids of what the drive leaves by: as typed, else every half-shaft, else the shaft {@code output}. A half-shaft may
     * have been typed by where it goes: {@code left}.
     */
    public List<Reference> effectiveOutputs() {
        List<Reference> halfShafts = halfShafts();
        if (outputs.isEmpty()) {
            return halfShafts.isEmpty() ? List.of(new Reference(OUTPUT, Pointers.child("", OUTPUT))) : halfShafts;
        }
        Set<String> known = halfShafts.stream().map(Reference::id).collect(Collectors.toSet());
        return outputs.stream()
                .map(output -> known.contains(TypedDifferential.halfShaft(output.id()))
                        ? new Reference(TypedDifferential.halfShaft(output.id()), output.pointer())
                        : output)
                .toList();
    }

    /** Ids of the half-shafts of every differential. */
    public List<Reference> halfShafts() {
        return differentials.stream()
                .filter(differential -> differential.sides() instanceof TypedDifferential.Sides.HalfShafts)
                .flatMap(differential ->
                        differential.sideIds().stream().map(id -> new Reference(id, differential.pointer())))
                .toList();
    }

    /** The differential of this id. */
    public Optional<TypedDifferential> differential(String id) {
        return differentials.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    private Map<String, TypedGear> gearsById() {
        Map<String, TypedGear> gears = new HashMap<>();
        gears().forEach(gear -> gears.putIfAbsent(gear.id(), gear));
        return gears;
    }

    public Optional<TypedGear> gear(String id) {
        return gears().filter(gear -> gear.id().equals(id)).findFirst();
    }

    public Optional<TypedShaft> shaft(String id) {
        return shafts.stream().filter(shaft -> shaft.id().equals(id)).findFirst();
    }

    /** How many items, meshes, rails, joins and names were typed. */
    public int size() {
        int along = shafts.stream().mapToInt(shaft -> 1 + shaft.along().size()).sum();
        int moves = rails().stream().mapToInt(rail -> 1 + rail.moves().size()).sum();
        return along
                + meshes().size()
                + moves
                + selectors().stream().mapToInt(each -> each.gate().size()).sum()
                + joins.size()
                + names.size();
    }

    /** Sleeves and sliding gears, in the order of the file. */
    public List<TypedMember> members() {
        return MembersOnShafts.of(shafts);
    }

    /** Every mesh typed anywhere, in the order of the file; one typed twice stands twice. */
    public List<TypedMesh> meshes() {
        Map<String, TypedGear> gears = gearsById();
        Stream<TypedMesh> always = always(gears);
        Stream<TypedMesh> slid = members().stream()
                .flatMap(member -> member.sides().values().stream()
                        .filter(TypedSide.Meshes.class::isInstance)
                        .flatMap(side -> meshes(member.meshingGear(), ((TypedSide.Meshes) side).gears(), gears)));
        return Stream.concat(always, slid).toList();
    }

    /** The meshes that a member comes into on a side. */
    public List<TypedMesh> meshes(TypedMember member, TypedSide.Meshes side) {
        return meshes(member.meshingGear(), side.gears(), gearsById()).toList();
    }

    /** The meshes that are always made, in the order of the file. */
    public List<TypedMesh> meshesAlwaysMade() {
        return always(gearsById()).toList();
    }

    private Stream<TypedMesh> always(Map<String, TypedGear> gears) {
        return gears().flatMap(gear -> Stream.concat(
                meshes(gear.id(), gear.meshes(), gears),
                gear.chained().stream()
                        .map(other -> new TypedMesh(gear.id(), other.id(), MeshKind.CHAIN, other.pointer()))));
    }

    private static Stream<TypedMesh> meshes(String gear, List<Reference> others, Map<String, TypedGear> gears) {
        Optional<TypedGear> one = Optional.ofNullable(gears.get(gear));
        return others.stream()
                .map(other -> new TypedMesh(
                        gear,
                        other.id(),
                        MeshKinds.between(one, Optional.ofNullable(gears.get(other.id()))),
                        other.pointer()));
    }

    /** The shaft that an item stands on; the rim of a sleeve stands on the sleeve's. Empty for the ring gear of a differential. */
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
