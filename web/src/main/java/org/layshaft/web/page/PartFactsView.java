package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.PartSet;

/**
 * What the catalogue knows of a part.
 *
 * @param kind {@code gear}, {@code blocking ring}
 * @param note empty where there is nothing to note
 */
record PartFactsView(String number, String name, String kind, List<FactView> facts, String note) {

    /**
     * One fact.
     *
     * @param place of the part; empty for the part itself
     * @param basis {@code measured} or {@code stated}
     */
    record FactView(String place, String what, String value, String basis) {}

    static List<PartFactsView> all(PartSet set, Catalogue catalogue) {
        return set.parts().values().stream()
                .map(catalogue::part)
                .flatMap(Optional::stream)
                .map(PartFactsView::of)
                .toList();
    }

    private static PartFactsView of(CataloguePart part) {
        return new PartFactsView(
                part.number(),
                part.name(),
                part.kind().spoken(),
                Stream.concat(
                                facts("", part.facts()),
                                part.features().entrySet().stream()
                                        .flatMap(feature -> facts(feature.getKey(), feature.getValue())))
                        .toList(),
                part.note());
    }

    private static Stream<FactView> facts(String place, Facts facts) {
        return facts.all().stream().map(fact -> fact(place, fact));
    }

    private static FactView fact(String place, Fact fact) {
        return new FactView(
                place.replace('-', ' '), fact.name().spoken(), fact.shown(), fact.measured() ? "measured" : "stated");
    }
}
