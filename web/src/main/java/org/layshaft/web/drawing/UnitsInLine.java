package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/** The units that joints join, one behind the other as the drive reaches them, so that each has its own stretch. */
final class UnitsInLine {
    private final Layout layout;
    private final Map<String, String> units = new HashMap<>();

    private UnitsInLine(Layout layout) {
        this.layout = layout;
        layout.all(Shaft.class).map(Shaft::id).forEach(id -> units.put(id, id));
        layout.all(Differential.class).forEach(this::addDifferential);
        layout.everyMesh().forEach(mesh -> join(carrierOf(mesh.first()), carrierOf(mesh.second())));
        layout.all(Bearing.class).forEach(bearing -> join(bearing.inner(), bearing.outer()));
        layout.all(Shaft.class).forEach(shaft -> shaft.carriedBy().ifPresent(carrier -> join(shaft.id(), carrier)));
        layout.all(Clutch.class).forEach(clutch -> clutch.drivenBy().ifPresent(shaft -> join(shaft, clutch.drives())));
        layout.members()
                .forEach(member -> member.sides().values().stream()
                        .filter(Engagement.Couples.class::isInstance)
                        .forEach(side -> join(carrierOf(member.part()), carrierOf(((Engagement.Couples) side).to()))));
    }

    /** What stands in each unit, by id; empty where the layout is of one piece. */
    static List<Set<String>> of(Layout layout) {
        if (layout.all(Joint.class).findAny().isEmpty()) {
            return List.of();
        }
        UnitsInLine inLine = new UnitsInLine(layout);
        return inLine.order().stream().map(inLine::items).toList();
    }

    private void addDifferential(Differential differential) {
        units.put(differential.id(), differential.id());
        differential.shaft().ifPresent(shaft -> join(shaft, differential.id()));
        differential.sides().forEach(side -> join(side, differential.id()));
    }

    private List<String> order() {
        Set<String> order = new LinkedHashSet<>();
        List<String> next = new ArrayList<>(List.of(units.get(layout.input())));
        while (!next.isEmpty()) {
            String unit = next.remove(0);
            if (order.add(unit)) {
                layout.all(Joint.class)
                        .filter(joint -> units.get(joint.from()).equals(unit))
                        .forEach(joint -> next.add(units.get(joint.to())));
            }
        }
        return List.copyOf(order);
    }

    private Set<String> items(String unit) {
        Set<String> items = new LinkedHashSet<>();
        layout.all(Shaft.class)
                .filter(shaft -> units.get(shaft.id()).equals(unit))
                .forEach(shaft -> items.addAll(shaft.along()));
        layout.all(Differential.class)
                .filter(differential -> units.get(differential.id()).equals(unit))
                .flatMap(differential -> Stream.concat(Stream.of(differential.id()), differential.ringGear().stream()))
                .forEach(items::add);
        return items;
    }

    /** The shaft or differential that something sits on. */
    private String carrierOf(String id) {
        return layout.find(Gear.class, id)
                .map(Gear::carrier)
                .map(this::carrierOf)
                .or(() -> layout.find(Sleeve.class, id).map(Sleeve::shaft))
                .or(() -> layout.all(Shaft.class)
                        .filter(shaft -> shaft.along().contains(id))
                        .map(Shaft::id)
                        .findFirst())
                .orElse(id);
    }

    private void join(String one, String other) {
        String kept = units.get(one);
        String gone = units.get(other);
        if (kept != null && gone != null) {
            units.replaceAll((body, unit) -> unit.equals(gone) ? kept : unit);
        }
    }
}
