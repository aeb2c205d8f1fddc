package org.layshaft.kb.layout;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One gearbox or transaxle, as facts.
 *
 * @param id unique among all packs
 * @param name what it is called: {@code Curlew}
 * @param summary one line about it
 * @param input id of the shaft that the clutch drives
 * @param outputs ids of the shafts and half-shafts that the drive leaves by toward the road
 * @param takeOffs ids of the shafts that it leaves by elsewhere, for a power take-off
 * @param meshes the meshes that are always made; those of sliding gears are in {@link #members}
 * @param members what the forks move
 * @param levers what selects, the gear lever first
 * @param printedRatios ratios from service data by gear name, as printed, to be checked against what is derived
 * @param road the vehicle that it stands in, where anything is stated of that
 * @param parts every part by id, those named above included, in the order of the file
 */
public record Layout(
        String id,
        String name,
        String summary,
        String input,
        List<String> outputs,
        List<String> takeOffs,
        List<Mesh> meshes,
        List<ShiftMember> members,
        Gate gate,
        List<Lever> levers,
        Map<String, BigDecimal> printedRatios,
        Optional<Road> road,
        Map<String, Part> parts) {
    public Layout {
        outputs = List.copyOf(outputs);
        takeOffs = List.copyOf(takeOffs);
        levers = List.copyOf(levers);
        meshes = List.copyOf(meshes);
        members = List.copyOf(members);
        printedRatios = Collections.unmodifiableMap(new LinkedHashMap<>(printedRatios));
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    public <P extends Part> Stream<P> all(Class<P> type) {
        return parts.values().stream().filter(type::isInstance).map(type::cast);
    }

    /** The part of this id and type; throws {@link IllegalArgumentException} where there is none. */
    public <P extends Part> P the(Class<P> type, String id) {
        return find(type, id)
                .orElseThrow(() -> new IllegalArgumentException(
                        "%s has no %s with the id '%s'".formatted(name, type.getSimpleName(), id)));
    }

    public <P extends Part> Optional<P> find(Class<P> type, String id) {
        return Optional.ofNullable(parts.get(id)).filter(type::isInstance).map(type::cast);
    }

    public Gear gear(String id) {
        return the(Gear.class, id);
    }

    public Shaft shaft(String id) {
        return the(Shaft.class, id);
    }

    /** The member that is this sleeve or sliding gear. */
    public ShiftMember member(String part) {
        return members.stream()
                .filter(member -> member.part().equals(part))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("%s has no fork that moves '%s'".formatted(name, part)));
    }

    /** The fork that moves this; empty for a clutch. */
    public Optional<Fork> forkOf(String member) {
        return all(Fork.class).filter(fork -> fork.member().equals(member)).findFirst();
    }

    /** The differentials whose half-shafts the drive leaves by, in the order of the layout. */
    public List<Differential> finalDrives() {
        return all(Differential.class)
                .filter(differential -> differential.sides().stream().anyMatch(outputs::contains))
                .toList();
    }

    /** Every mesh there can be, made always or only while a gear is slid. */
    public Stream<Mesh> everyMesh() {
        Stream<Mesh> slid = members.stream()
                .flatMap(member -> member.sides().values().stream())
                .filter(Engagement.Meshes.class::isInstance)
                .flatMap(engagement -> ((Engagement.Meshes) engagement).meshes().stream());
        return Stream.concat(meshes.stream(), slid).distinct();
    }
}
