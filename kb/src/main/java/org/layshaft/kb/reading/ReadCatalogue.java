package org.layshaft.kb.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Interchange;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.Supersession;

/** The catalogues of a pack as read, with the place of everything in them. */
public record ReadCatalogue(
        List<Located<CataloguePart>> parts,
        List<Located<PartSet>> sets,
        List<Located<Build>> builds,
        List<Located<Supersession>> supersessions,
        List<Located<Interchange>> interchanges) {
    /** Of a pack without any. */
    public static final ReadCatalogue NOTHING =
            new ReadCatalogue(List.of(), List.of(), List.of(), List.of(), List.of());

    public ReadCatalogue {
        parts = List.copyOf(parts);
        sets = List.copyOf(sets);
        builds = List.copyOf(builds);
        supersessions = List.copyOf(supersessions);
        interchanges = List.copyOf(interchanges);
    }

    public ReadCatalogue and(ReadCatalogue other) {
        return new ReadCatalogue(
                both(parts, other.parts),
                both(sets, other.sets),
                both(builds, other.builds),
                both(supersessions, other.supersessions),
                both(interchanges, other.interchanges));
    }

    private static <T> List<T> both(List<T> first, List<T> second) {
        List<T> both = new ArrayList<>(first);
        both.addAll(second);
        return both;
    }

    /** Every mention of a part or set by its number. */
    public Stream<Located<String>> mentioned() {
        return Stream.of(
                        sets.stream().flatMap(set -> numbers(set, set.value().parts().values().stream())),
                        builds.stream().flatMap(build -> numbers(build, build.value().fitted().values().stream())),
                        supersessions.stream()
                                .flatMap(each -> numbers(
                                        each,
                                        Stream.of(
                                                        Stream.of(each.value().was()),
                                                        each.value().by().stream(),
                                                        each.value().with().stream())
                                                .flatMap(numbers -> numbers))),
                        interchanges.stream()
                                .flatMap(each -> numbers(
                                        each,
                                        Stream.concat(
                                                Stream.of(
                                                        each.value().use(),
                                                        each.value().inPlaceOf()),
                                                each.value().with().stream()))))
                .flatMap(mentions -> mentions);
    }

    private static Stream<Located<String>> numbers(Located<?> in, Stream<String> numbers) {
        return numbers.map(number -> new Located<>(number, in.file(), in.pointer(), in.report()));
    }
}
