package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.kb.catalogue.SetShape;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;

/** A catalogue in the making, of gears that are told apart by their module alone. */
final class Stock {
    private final Map<String, CataloguePart> parts = new LinkedHashMap<>();
    private final Map<String, PartSet> sets = new LinkedHashMap<>();
    private final Map<String, Build> builds = new LinkedHashMap<>();
    private final Map<String, Layout> layouts = new LinkedHashMap<>();

    Stock gear(String number, double moduleMm) {
        return part(number, ComponentKind.GEAR, Facts.of(List.of(Fact.of(FactName.MODULE_MM, moduleMm))));
    }

    Stock part(String number, ComponentKind kind, Facts facts) {
        parts.put(number, new CataloguePart(number, kind, number, facts, Map.of(), ""));
        return this;
    }

    Stock set(String number, SetShape shape, boolean onlyWhole, String... rolesAndNumbers) {
        Map<String, String> byRole = new LinkedHashMap<>();
        for (int at = 0; at < rolesAndNumbers.length; at += 2) {
            byRole.put(rolesAndNumbers[at], rolesAndNumbers[at + 1]);
        }
        sets.put(number, new PartSet(number, number, shape, byRole, onlyWhole, false, ""));
        return this;
    }

    /** A box of this layout in which every gear is a part of its own, of module 2, by the number {@code <layout>:<gear>}. */
    Stock box(String layout) {
        Layout box = Boxes.the(layout);
        Map<String, String> fitted = new LinkedHashMap<>();
        box.all(Gear.class).map(Gear::id).forEach(gear -> {
            gear(layout + ":" + gear, 2);
            fitted.put(gear, layout + ":" + gear);
        });
        layouts.put(layout, box);
        builds.put(layout, new Build(layout, layout, layout, SerialRange.ALL, fitted));
        return this;
    }

    Catalogue catalogue() {
        return new Catalogue(parts, sets, builds, List.of(), List.of());
    }

    /** With these checks and no others. */
    PartsCounter counter(FitCheck... checks) {
        return PartsCounter.of(layouts, catalogue(), FitChecks.of(checks));
    }

    /** Everything that can be ordered: sets, and parts that are in no set that is only sold whole. */
    List<PartSet> units() {
        List<PartSet> units = new ArrayList<>(sets.values());
        parts.values().stream()
                .filter(part -> sets.values().stream()
                        .noneMatch(set -> set.onlyWhole() && set.parts().containsValue(part.number())))
                .map(PartSet::of)
                .forEach(units::add);
        return units;
    }
}
