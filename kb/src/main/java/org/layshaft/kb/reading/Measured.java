package org.layshaft.kb.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Report;

/** Marks the facts of a part that were measured. */
final class Measured {
    private Measured() {}

    /** The part with those facts marked; a path that leads to none is told. */
    static CataloguePart in(CataloguePart part, List<Item> paths, Report report) {
        CataloguePart marked = part;
        for (Item path : paths) {
            Optional<CataloguePart> more = path.text().isEmpty()
                    ? Optional.of(marked)
                    : marked(marked, path.text().get());
            if (more.isEmpty()) {
                report.broken(
                        path.pointer(),
                        "Nothing is stated at '%s' of part %s."
                                .formatted(path.text().get(), part.number()),
                        path.text().get(),
                        "Name a fact that is stated, by section and key: toothing/tip_mm; of a place on the part, with the place before it and a colon: third:seat/diameter_mm.");
            }
            marked = more.orElse(marked);
        }
        return marked;
    }

    private static Optional<CataloguePart> marked(CataloguePart part, String path) {
        int colon = path.indexOf(':');
        Optional<FactName> name = FactName.at(path.substring(colon + 1));
        if (colon < 0) {
            return name.flatMap(part.facts()::find)
                    .map(fact -> with(part, part.facts().with(fact.asMeasured()), part.features()));
        }
        String place = path.substring(0, colon);
        Facts facts = part.feature(place);
        return name.flatMap(facts::find).map(fact -> {
            Map<String, Facts> features = new LinkedHashMap<>(part.features());
            features.put(place, facts.with(fact.asMeasured()));
            return with(part, part.facts(), features);
        });
    }

    private static CataloguePart with(CataloguePart part, Facts facts, Map<String, Facts> features) {
        return new CataloguePart(part.number(), part.kind(), part.name(), facts, features, part.note());
    }
}
