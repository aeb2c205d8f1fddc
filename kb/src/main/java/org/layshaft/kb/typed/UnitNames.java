package org.layshaft.kb.typed;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.layout.Side;

/**
 * How things of one layout are called where it is a unit of another: every id and every name begins with that of the
 * unit, and everything stands where the unit is named.
 */
record UnitNames(TypedUnit unit) {

    /** The same, whole, as a unit: what the drive leaves by is then said, and only one unit keeps its engine clutch. */
    TypedLayout layout(TypedLayout layout) {
        return new TypedLayout(
                layout.id(),
                layout.name(),
                layout.summary(),
                reference(layout.input()),
                references(layout.effectiveOutputs()),
                references(layout.takeOffs()),
                layout.shafts().stream().map(shaft -> shaft.within(this)).toList(),
                layout.differentials().stream().map(each -> each.within(this)).toList(),
                layout.selector().within(this),
                layout.levers().stream().map(lever -> lever.within(this)).toList(),
                layout.clutch().map(clutch -> clutch.within(this)),
                layout.printed(),
                Optional.empty(),
                names(layout.names()),
                List.of(),
                layout.joins().stream().map(join -> join.within(this)).toList());
    }

    private Map<Reference, Naming> names(Map<Reference, Naming> names) {
        Map<Reference, Naming> within = new LinkedHashMap<>();
        names.forEach((part, naming) -> {
            if (!part.id().equals(TypedClutch.ID)) {
                within.put(reference(part), naming(naming));
            } else if (unit.keepsClutch()) {
                within.put(new Reference(part.id(), pointer()), naming);
            }
        });
        return within;
    }

    String pointer() {
        return unit.layout().pointer();
    }

    String id(String id) {
        return unit.name() + "-" + id;
    }

    /** An id that the unit itself begins, or that begins one of its own: {@code range-}. */
    String prefix(String prefix) {
        return id(prefix);
    }

    Reference reference(Reference reference) {
        return new Reference(id(reference.id()), pointer());
    }

    Optional<Reference> reference(Optional<Reference> reference) {
        return reference.map(this::reference);
    }

    List<Reference> references(List<Reference> references) {
        return references.stream().map(this::reference).toList();
    }

    Naming naming(Naming naming) {
        return new Naming(
                naming.name().map(this::name),
                naming.also().stream().map(this::name).toList());
    }

    Map<Side, TypedSide> sides(Map<Side, TypedSide> sides) {
        Map<Side, TypedSide> within = new EnumMap<>(Side.class);
        sides.forEach((side, typed) -> within.put(side, typed.within(this)));
        return within;
    }

    /** In words, once. */
    String name(String name) {
        String words = unit.name().replace('-', ' ');
        return name.startsWith(words) ? name : words + " " + name;
    }
}
