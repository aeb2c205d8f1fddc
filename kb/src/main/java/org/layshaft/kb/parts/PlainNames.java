package org.layshaft.kb.parts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.typed.Naming;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedUnit;

/** Lets a part of a unit be called without the unit, where no other part can be meant: the 3-4 fork of a whole car. */
public final class PlainNames {
    private PlainNames() {}

    /** The layout, its units in place, with these names added. */
    public static TypedLayout added(TypedLayout whole, List<TypedUnit> units) {
        List<BuiltPart> parts = LayoutBuilder.build(whole).parts();
        Map<String, Long> taken = parts.stream()
                .flatMap(built -> Stream.concat(names(built.part()), plain(built, units).stream()))
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        Map<Reference, Naming> names = new LinkedHashMap<>(whole.names());
        Map<String, Reference> known = names.keySet().stream()
                .collect(Collectors.toMap(Reference::id, Function.identity(), (first, second) -> first));
        for (BuiltPart built : parts) {
            plain(built, units)
                    .filter(name -> taken.get(name) == 1)
                    .ifPresent(name -> names.merge(
                            known.getOrDefault(
                                    built.part().id(),
                                    new Reference(built.part().id(), built.pointer())),
                            new Naming(Optional.empty(), List.of(name)),
                            PlainNames::together));
        }
        return whole.withNames(names);
    }

    private static Stream<String> names(Part part) {
        return Stream.concat(Stream.of(part.name()), part.also().stream()).distinct();
    }

    /** The name of a part of a unit without that of the unit. */
    private static Optional<String> plain(BuiltPart built, List<TypedUnit> units) {
        Part part = built.part();
        return units.stream()
                .filter(unit -> unit.layout().pointer().equals(built.pointer()))
                .map(unit -> DefaultNames.words(unit.name()) + " ")
                .filter(words -> part.name().startsWith(words))
                .map(words -> part.name().substring(words.length()))
                .findFirst();
    }

    private static Naming together(Naming one, Naming other) {
        return new Naming(
                one.name(),
                Stream.concat(one.also().stream(), other.also().stream())
                        .distinct()
                        .toList());
    }
}
