package org.layshaft.kb.pack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.reading.Located;
import org.layshaft.kb.reading.ReadCatalogue;

/** Puts together the catalogues of sound packs. */
final class CatalogueGathering {
    private CatalogueGathering() {}

    static Catalogue of(List<ReadPack> packs) {
        ReadCatalogue all = packs.stream().map(ReadPack::catalogue).reduce(ReadCatalogue.NOTHING, ReadCatalogue::and);
        return new Catalogue(
                by(all.parts(), CataloguePart::number),
                by(all.sets(), PartSet::number),
                by(all.builds(), Build::id),
                all.supersessions().stream().map(Located::value).toList(),
                all.interchanges().stream().map(Located::value).toList());
    }

    private static <T> Map<String, T> by(List<Located<T>> located, Function<T, String> key) {
        Map<String, T> byKey = new LinkedHashMap<>();
        located.forEach(each -> byKey.putIfAbsent(key.apply(each.value()), each.value()));
        return byKey;
    }
}
