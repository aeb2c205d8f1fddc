package org.layshaft.kb.typed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A layout that is joined from others, put together into one with everything in it.
 *
 * <p>What a unit is called goes before all its ids. The gear lever of the first unit that has one is that of the whole;
 * that of another unit is a lever by the name of the unit. The drive leaves by the outputs of units that nothing is
 * joined to, unless it is typed where.
 */
public final class Assembly {
    private final TypedLayout own;
    private final List<TypedLayout> units;
    private final Set<String> shafts;

    private Assembly(TypedLayout own, List<TypedLayout> units) {
        this.own = own;
        this.units = units;
        this.shafts = Stream.concat(Stream.of(own), units.stream())
                .flatMap(layout -> layout.shafts().stream())
                .map(TypedShaft::id)
                .collect(Collectors.toSet());
    }

    /**
     * The layout with its units in place.
     *
     * @param own what was typed, units only by their ids
     * @param units the layout of each unit, whole itself, by the name of the unit
     */
    public static TypedLayout of(TypedLayout own, Map<String, TypedLayout> units) {
        List<TypedLayout> within = own.units().stream()
                .map(unit -> new UnitNames(unit).layout(units.get(unit.name())))
                .toList();
        return new Assembly(own, within).whole();
    }

    private TypedLayout whole() {
        List<TypedJoin> joins = joins();
        return new TypedLayout(
                own.id(),
                own.name(),
                own.summary(),
                end(own.input()),
                outputs(joins),
                takeOffs(joins),
                all(TypedLayout::shafts),
                all(TypedLayout::differentials),
                gearLever().orElse(own.selector()),
                levers(),
                own.units().stream().anyMatch(TypedUnit::keepsClutch)
                        ? units.get(0).clutch()
                        : own.clutch(),
                own.printed(),
                own.road(),
                names(),
                List.of(),
                joins);
    }

    private <T> List<T> all(Function<TypedLayout, List<T>> part) {
        return Stream.concat(units.stream(), Stream.of(own))
                .flatMap(layout -> part.apply(layout).stream())
                .toList();
    }

    private List<TypedJoin> joins() {
        Stream<TypedJoin> inner = units.stream().flatMap(unit -> unit.joins().stream());
        Stream<TypedJoin> outer = own.joins().stream()
                .map(join -> new TypedJoin(join.pointer(), join.id(), join.naming(), end(join.from()), end(join.to())));
        return Stream.concat(inner, outer).toList();
    }

    /** {@code box-input} and {@code box-output} mean those of the unit, whatever their shafts are called there. */
    private Reference end(Reference end) {
        if (shafts.contains(end.id())) {
            return end;
        }
        for (int place = 0; place < units.size(); place++) {
            String name = own.units().get(place).name();
            TypedLayout unit = units.get(place);
            List<Reference> outputs = unit.outputs();
            if (end.id().equals(name + "-input")) {
                return new Reference(unit.input().id(), end.pointer());
            }
            if (end.id().equals(name + "-output") && outputs.size() == 1) {
                return new Reference(outputs.get(0).id(), end.pointer());
            }
        }
        return end;
    }

    private List<Reference> outputs(List<TypedJoin> joins) {
        if (!own.outputs().isEmpty()) {
            return own.outputs().stream().map(this::end).toList();
        }
        Stream<Reference> left = units.stream().flatMap(unit -> notJoined(unit.outputs(), joins));
        return Stream.concat(left, own.halfShafts().stream()).toList();
    }

    private List<Reference> takeOffs(List<TypedJoin> joins) {
        Stream<Reference> left = units.stream().flatMap(unit -> notJoined(unit.takeOffs(), joins));
        return Stream.concat(left, own.takeOffs().stream().map(this::end)).toList();
    }

    private static Stream<Reference> notJoined(List<Reference> ends, List<TypedJoin> joins) {
        return ends.stream()
                .filter(end -> joins.stream().noneMatch(join -> join.from().id().equals(end.id())));
    }

    private Optional<TypedSelector> gearLever() {
        return units.stream()
                .map(TypedLayout::selector)
                .filter(selector -> !selector.rails().isEmpty())
                .findFirst();
    }

    private List<TypedLever> levers() {
        List<TypedLever> levers = new ArrayList<>();
        for (int place = 0; place < units.size(); place++) {
            TypedSelector selector = units.get(place).selector();
            if (!selector.rails().isEmpty()
                    && gearLever().filter(selector::equals).isEmpty()) {
                levers.add(lever(own.units().get(place), selector));
            }
            levers.addAll(units.get(place).levers());
        }
        levers.addAll(own.levers());
        return levers;
    }

    private static TypedLever lever(TypedUnit unit, TypedSelector selector) {
        Naming naming = new Naming(Optional.of(unit.name().replace('-', ' ') + " lever"), List.of());
        return new TypedLever(selector.pointer(), unit.name(), naming, selector, List.of());
    }

    /** Those typed for the whole go before those of the units. */
    private Map<Reference, Naming> names() {
        Map<Reference, Naming> names = new LinkedHashMap<>(own.names());
        units.forEach(unit -> unit.names().forEach(names::putIfAbsent));
        return names;
    }
}
