package org.layshaft.engine.swap;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Road;

/**
 * What is to be changed on a box and the vehicle around it. Whatever is empty stays as it is.
 *
 * @param gears by id, what stands in the place of that gear: other teeth, module, helix, hand or pressure angle
 * @param crowns ids of the bevel or hypoid crowns that go to the other side of their pinion
 * @param tyre other wheels
 * @param axleRatio turns of the box's output for one turn of the wheels, behind the layout
 * @param speedDrive other gears for the speedometer
 */
public record Change(
        Map<String, Gear> gears,
        Set<String> crowns,
        Optional<OtherTyre> tyre,
        Optional<BigDecimal> axleRatio,
        Optional<SpeedDrive> speedDrive) {
    /** Everything stays. */
    public static final Change NONE =
            new Change(Map.of(), Set.of(), Optional.empty(), Optional.empty(), Optional.empty());

    public Change {
        gears = Collections.unmodifiableMap(new LinkedHashMap<>(gears));
        crowns = Collections.unmodifiableSet(new TreeSet<>(crowns));
    }

    /** The same with this gear in the place of the one of its id. */
    public Change with(Gear gear) {
        Map<String, Gear> more = new LinkedHashMap<>(gears);
        more.put(gear.id(), gear);
        return new Change(more, crowns, tyre, axleRatio, speedDrive);
    }

    /** The same with this crown on the other side of its pinion. */
    public Change withCrownAcross(String crown) {
        Set<String> more = new TreeSet<>(crowns);
        more.add(crown);
        return new Change(gears, more, tyre, axleRatio, speedDrive);
    }

    public Change with(OtherTyre other) {
        return new Change(gears, crowns, Optional.of(other), axleRatio, speedDrive);
    }

    public Change withAxleRatio(BigDecimal ratio) {
        return new Change(gears, crowns, tyre, Optional.of(ratio), speedDrive);
    }

    public Change with(SpeedDrive drive) {
        return new Change(gears, crowns, tyre, axleRatio, Optional.of(drive));
    }

    /** Both together; where both are about one thing, the other goes before. */
    public Change and(Change other) {
        Map<String, Gear> allGears = new LinkedHashMap<>(gears);
        allGears.putAll(other.gears);
        Set<String> allCrowns = new TreeSet<>(crowns);
        allCrowns.addAll(other.crowns);
        return new Change(
                allGears,
                allCrowns,
                other.tyre.or(() -> tyre),
                other.axleRatio.or(() -> axleRatio),
                other.speedDrive.or(() -> speedDrive));
    }

    /**
     * The layout after the change. Printed ratios are those of the gears that were in it: where any gets other teeth,
     * none of them is kept.
     *
     * @throws org.layshaft.engine.stated.ImpossibleFactsException where the change does not suit the layout, with
     *     everything that keeps it from that
     */
    public Layout applyTo(Layout layout) {
        new ChangeCheck(layout, this).check();
        boolean sameTeeth = gears.values().stream()
                .allMatch(gear -> gear.teeth() == layout.gear(gear.id()).teeth());
        Map<String, Part> parts = new LinkedHashMap<>(layout.parts());
        parts.putAll(gears);
        CrownsAcross across = new CrownsAcross(crowns);
        return new Layout(
                layout.id(),
                layout.name(),
                layout.summary(),
                layout.input(),
                layout.outputs(),
                layout.takeOffs(),
                across.meshes(layout.meshes()),
                across.members(layout.members()),
                layout.gate(),
                layout.levers(),
                sameTeeth ? layout.printedRatios() : Map.of(),
                road(layout),
                parts);
    }

    /** The meshes whose teeth are changed, or whose crown changes sides, in the order of the layout. */
    Stream<Mesh> meshesTouched(Layout layout) {
        return layout.everyMesh()
                .filter(mesh -> Stream.of(mesh.first(), mesh.second())
                        .anyMatch(gear -> crowns.contains(gear)
                                || gears.containsKey(gear) && !gears.get(gear).equals(layout.gear(gear))));
    }

    private Optional<Road> road(Layout layout) {
        if (tyre.isEmpty() && axleRatio.isEmpty()) {
            return layout.road();
        }
        Road road = layout.road().orElse(Road.NOTHING);
        Road onTyre = tyre.map(other -> other.on(road)).orElse(road);
        return Optional.of(axleRatio.map(onTyre::withAxleRatio).orElse(onTyre));
    }
}
