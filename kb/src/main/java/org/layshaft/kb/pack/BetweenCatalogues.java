package org.layshaft.kb.pack;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.kb.catalogue.Supersession;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.reading.Located;
import org.layshaft.kb.reading.ReadCatalogue;

/** What a catalogue says of numbers and of serial numbers, held against all that are read. */
final class BetweenCatalogues {
    private BetweenCatalogues() {}

    static void check(List<ReadPack> packs) {
        List<ReadCatalogue> catalogues = packs.stream().map(ReadPack::catalogue).toList();
        tellRepeated(
                "part or set",
                catalogues.stream()
                        .flatMap(each -> Stream.concat(
                                each.parts().stream()
                                        .map(part -> named(part, part.value().number())),
                                each.sets().stream()
                                        .map(set -> named(set, set.value().number())))));
        tellRepeated(
                "build",
                catalogues.stream()
                        .flatMap(each -> each.builds().stream())
                        .map(build -> named(build, build.value().id())));
        packs.forEach(pack -> tellUnknown(pack, packs));
        catalogues.forEach(BetweenCatalogues::tellRoles);
        catalogues.forEach(BetweenCatalogues::tellSerials);
        tellRings(catalogues);
    }

    private static Located<String> named(Located<?> of, String name) {
        return new Located<>(name, of.file(), of.pointer(), of.report());
    }

    private static void tellRepeated(String kind, Stream<Located<String>> all) {
        Map<String, Located<String>> first = new HashMap<>();
        all.forEach(located -> {
            Located<String> before = first.putIfAbsent(located.value(), located);
            if (before != null) {
                located.broken(
                        "There is another %s '%s' already: %s.".formatted(kind, located.value(), before.place()),
                        located.value(),
                        "Give this one another number, or take one of the two out.");
            }
        });
    }

    /** Only what is in the pack itself or in a sound one counts: nothing of a broken pack is loaded. */
    private static void tellUnknown(ReadPack pack, List<ReadPack> packs) {
        List<ReadCatalogue> known = packs.stream()
                .filter(other -> other == pack || other.isSound())
                .map(ReadPack::catalogue)
                .toList();
        Set<String> parts = numbers(known, ReadCatalogue::parts, CataloguePart::number);
        Set<String> numbers = new TreeSet<>(parts);
        numbers.addAll(numbers(known, ReadCatalogue::sets, PartSet::number));
        pack.catalogue()
                .mentioned()
                .filter(mention -> !numbers.contains(mention.value()))
                .forEach(mention -> mention.broken(
                        "There is no part or set '%s'.".formatted(mention.value()),
                        mention.value(),
                        Nearest.advice(mention.value(), numbers)));
        tellSetsInSets(pack.catalogue(), parts, numbers);
    }

    private static void tellSetsInSets(ReadCatalogue catalogue, Set<String> parts, Set<String> numbers) {
        Stream.concat(
                        catalogue.sets().stream()
                                .flatMap(set ->
                                        set.value().parts().values().stream().map(number -> named(set, number))),
                        catalogue.builds().stream()
                                .flatMap(build ->
                                        build.value().fitted().values().stream().map(number -> named(build, number))))
                .filter(mention -> numbers.contains(mention.value()) && !parts.contains(mention.value()))
                .forEach(mention -> mention.broken(
                        "'%s' is a set, and only a part can stand here.".formatted(mention.value()),
                        mention.value(),
                        "Name the parts of the set, each by its number."));
    }

    private static <T> Set<String> numbers(
            List<ReadCatalogue> catalogues,
            Function<ReadCatalogue, List<Located<T>>> list,
            Function<T, String> number) {
        return catalogues.stream()
                .flatMap(each -> list.apply(each).stream())
                .map(each -> number.apply(each.value()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void tellRoles(ReadCatalogue catalogue) {
        catalogue
                .sets()
                .forEach(set -> set.value().parts().keySet().stream()
                        .filter(role -> !set.value().shape().hasRole(role))
                        .forEach(role -> set.broken(
                                "A set of the shape %s has no '%s'."
                                        .formatted(set.value().shape().word(), role),
                                role,
                                Nearest.advice(role, set.value().shape().roles()))));
    }

    private static void tellSerials(ReadCatalogue catalogue) {
        catalogue.builds().forEach(build -> tellEmpty(build, build.value().serials()));
        catalogue.supersessions().forEach(each -> tellEmpty(each, each.value().serials()));
        List<Located<Build>> builds = catalogue.builds();
        for (int later = 0; later < builds.size(); later++) {
            for (Located<Build> earlier : builds.subList(0, later)) {
                tellOverlap(earlier, builds.get(later));
            }
        }
    }

    private static void tellEmpty(Located<?> in, SerialRange serials) {
        if (serials.isEmpty()) {
            in.broken(
                    "The serial numbers end before they begin: %s.".formatted(serials.words()),
                    serials.words(),
                    "Let 'from' be at most 'to'.");
        }
    }

    private static void tellOverlap(Located<Build> earlier, Located<Build> later) {
        Build one = earlier.value();
        Build other = later.value();
        if (one.layout().equals(other.layout()) && one.serials().overlaps(other.serials())) {
            later.broken(
                    "Two builds of '%s' have serial numbers in common: %s has %s, %s has %s."
                            .formatted(
                                    one.layout(),
                                    one.id(),
                                    one.serials().words(),
                                    other.id(),
                                    other.serials().words()),
                    other.serials().words(),
                    "Give each build serial numbers of its own.");
        }
    }

    /** A number that is replaced by what it replaced itself can never be ordered. */
    private static void tellRings(List<ReadCatalogue> catalogues) {
        Map<String, List<Located<Supersession>>> byOld = catalogues.stream()
                .flatMap(each -> each.supersessions().stream())
                .collect(Collectors.groupingBy(each -> each.value().was()));
        byOld.values().stream()
                .flatMap(List::stream)
                .filter(each -> leadsBack(each.value(), byOld))
                .forEach(
                        each -> each.broken(
                                "'%s' is replaced in a ring: what follows it is replaced by it again."
                                        .formatted(each.value().was()),
                                each.value().was(),
                                "Supersession runs one way. Where either may be used in place of the other, say so as two interchanges."));
    }

    private static boolean leadsBack(Supersession from, Map<String, List<Located<Supersession>>> byOld) {
        Deque<String> ahead = new ArrayDeque<>(from.by().stream().toList());
        Set<String> seen = new HashSet<>();
        while (!ahead.isEmpty()) {
            String number = ahead.remove();
            if (number.equals(from.was())) {
                return true;
            }
            if (seen.add(number)) {
                byOld.getOrDefault(number, List.of())
                        .forEach(next -> next.value().by().ifPresent(ahead::add));
            }
        }
        return false;
    }
}
