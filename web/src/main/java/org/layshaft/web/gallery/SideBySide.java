package org.layshaft.web.gallery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Box.DerivedGear;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.layout.Layout;

/**
 * Two boxes, one beside the other.
 *
 * @param gears by name, those of the first in their order, then those that only the other has
 * @param structure what they are and have, where they differ
 * @param alike properties that both have
 * @param sharedParts numbers that the catalogue tells of in boxes of both
 */
public record SideBySide(
        Likeness one,
        Likeness other,
        List<GearPair> gears,
        List<Differs> structure,
        List<Property> alike,
        Telling<List<SharedPart>> sharedParts) {

    /** One gear in both; empty where a box has none of that name. */
    public record GearPair(String gear, Optional<Geared> one, Optional<Geared> other) {
        /** How much higher the other's ratio is, over the first's; empty where either has none. */
        public Optional<Fraction> change() {
            return one.flatMap(first ->
                    other.map(second -> second.ratio().over(first.ratio()).minus(Fraction.ONE)));
        }
    }

    /** @param step ratio over that of the next higher gear */
    public record Geared(Fraction ratio, Optional<Fraction> step) {}

    /** Something in which they differ, each in words. */
    public record Differs(String what, String one, String other) {}

    /** A part that stands in both, with its places in each. */
    public record SharedPart(String number, String name, Set<String> inOne, Set<String> inOther) {}

    public static SideBySide of(Likeness one, Likeness other, Catalogue catalogue) {
        return new SideBySide(
                one,
                other,
                gears(one.box(), other.box()),
                structure(one, other),
                Property.of(one).stream()
                        .filter(property -> property.holds(other))
                        .toList(),
                parts(one.layout(), other.layout(), catalogue));
    }

    /** Highest ratio over lowest among the forward gears; empty where there are not two. */
    public static Optional<Fraction> spread(Box box) {
        List<Fraction> forward = box.gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .map(DerivedGear::ratio)
                .sorted()
                .toList();
        return forward.size() < 2
                ? Optional.empty()
                : Optional.of(forward.get(forward.size() - 1).over(forward.get(0)));
    }

    /** Its ratio over that of the next in the list, where both go forward. */
    public static Optional<Fraction> step(List<DerivedGear> gears, int place) {
        return gears.stream()
                .skip(place + 1L)
                .findFirst()
                .filter(next -> next.direction() == Direction.FORWARD
                        && gears.get(place).direction() == Direction.FORWARD)
                .map(next -> gears.get(place).ratio().over(next.ratio()));
    }

    private static List<GearPair> gears(Box one, Box other) {
        Map<String, Geared> first = geared(one);
        Map<String, Geared> second = geared(other);
        Set<String> names = new LinkedHashSet<>();
        one.gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .forEach(gear -> names.add(gear.name()));
        other.gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .forEach(gear -> names.add(gear.name()));
        names.addAll(first.keySet());
        names.addAll(second.keySet());
        return names.stream()
                .map(name ->
                        new GearPair(name, Optional.ofNullable(first.get(name)), Optional.ofNullable(second.get(name))))
                .toList();
    }

    private static Map<String, Geared> geared(Box box) {
        Map<String, Geared> geared = new LinkedHashMap<>();
        for (int i = 0; i < box.gears().size(); i++) {
            DerivedGear gear = box.gears().get(i);
            geared.put(gear.name(), new Geared(gear.ratio(), step(box.gears(), i)));
        }
        return geared;
    }

    private static List<Differs> structure(Likeness one, Likeness other) {
        List<Differs> differs = new ArrayList<>();
        add("What it is", one.family().says(), other.family().says(), differs);
        add("Forward speeds", one.forward(), other.forward(), differs);
        add("Reverse speeds", one.reverse(), other.reverse(), differs);
        add("Shafts", one.shafts(), other.shafts(), differs);
        add("Reverse", one.reverseBy().says(), other.reverseBy().says(), differs);
        for (Property property : Property.values()) {
            boolean toldAlready =
                    property.facet() == Property.Facet.FAMILY || property.facet() == Property.Facet.REVERSE;
            if (!toldAlready) {
                add(property.says(), property.holds(one) ? "yes" : "no", property.holds(other) ? "yes" : "no", differs);
            }
        }
        return differs;
    }

    private static void add(String what, Object one, Object other, List<Differs> differs) {
        if (!one.equals(other)) {
            differs.add(new Differs(what, one.toString(), other.toString()));
        }
    }

    private static Telling<List<SharedPart>> parts(Layout one, Layout other, Catalogue catalogue) {
        return fitted(one, catalogue)
                .with(
                        fitted(other, catalogue),
                        (first, second) -> first.entrySet().stream()
                                .filter(part -> second.containsKey(part.getKey()))
                                .map(part -> new SharedPart(
                                        part.getKey(),
                                        catalogue
                                                .set(part.getKey())
                                                .map(set -> set.name())
                                                .orElse(""),
                                        part.getValue(),
                                        second.get(part.getKey())))
                                .toList());
    }

    /** Places by part number, in boxes of any build. */
    private static Telling<Map<String, Set<String>>> fitted(Layout layout, Catalogue catalogue) {
        List<Build> builds = catalogue.builds().values().stream()
                .filter(build -> build.layout().equals(layout.id()))
                .toList();
        if (builds.isEmpty()) {
            return Telling.missing("a box of %s in the catalogue".formatted(layout.name()));
        }
        Map<String, Set<String>> places = new LinkedHashMap<>();
        builds.forEach(build -> build.fitted()
                .forEach((place, number) -> places.computeIfAbsent(number, any -> new LinkedHashSet<>())
                        .add(place)));
        return Telling.told(places);
    }
}
