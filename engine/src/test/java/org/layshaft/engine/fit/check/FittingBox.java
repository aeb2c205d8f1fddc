package org.layshaft.engine.fit.check;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.layshaft.engine.fit.AskedChecks;
import org.layshaft.engine.fit.FitCheck;
import org.layshaft.engine.fit.FitChecks;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;

/**
 * A box in which every part was taken out and another, of the same facts, put in. Immutable.
 *
 * @param empty the box without any part
 * @param was parts by place before
 * @param is parts by place now
 */
record FittingBox(Fitted empty, Map<String, CataloguePart> was, Map<String, CataloguePart> is) {
    private static final Reading READING = PackReader.read(List.of(PackSource.folder(folder())));

    /** A spot on a part; the part itself where the feature is empty. */
    record Spot(String place, String feature) {}

    static FittingBox phalarope() {
        Layout layout = READING.knowledge()
                .layout("phalarope")
                .orElseThrow(() -> new IllegalStateException(READING.findings().toString()));
        Map<String, CataloguePart> parts = new LinkedHashMap<>();
        READING.knowledge()
                .catalogue()
                .builds()
                .get("phalarope")
                .fitted()
                .forEach((place, number) -> parts.put(
                        place, READING.knowledge().catalogue().part(number).orElseThrow()));
        return of(layout, parts);
    }

    static FittingBox of(Layout layout, Map<String, CataloguePart> parts) {
        Map<String, CataloguePart> same = new LinkedHashMap<>();
        parts.forEach((place, part) -> same.put(place, changed(part, "", UnaryOperator.identity())));
        return new FittingBox(Fitted.of(layout, Map.of()), parts, same);
    }

    FittingBox with(String place, String feature, Fact fact) {
        return new FittingBox(empty, was, changed(is, new Spot(place, feature), facts -> facts.with(fact)));
    }

    FittingBox with(String place, Fact fact) {
        return with(place, "", fact);
    }

    FittingBox without(Spot spot, FactName fact) {
        return new FittingBox(empty, was, changed(is, spot, facts -> facts.without(fact)));
    }

    FittingBox without(String place, FactName fact) {
        return without(new Spot(place, ""), fact);
    }

    /** With a fact changed both now and before, as if it had always been so. */
    FittingBox always(String place, String feature, Fact fact) {
        Spot spot = new Spot(place, feature);
        return new FittingBox(
                empty, changed(was, spot, facts -> facts.with(fact)), changed(is, spot, facts -> facts.with(fact)));
    }

    FittingBox neverHad(Spot spot, FactName fact) {
        return new FittingBox(
                empty,
                changed(was, spot, facts -> facts.without(fact)),
                changed(is, spot, facts -> facts.without(fact)));
    }

    FittingBox hadNot(Spot spot, FactName fact) {
        return new FittingBox(empty, changed(was, spot, facts -> facts.without(fact)), is);
    }

    FittingBox withPart(String place, CataloguePart part) {
        Map<String, CataloguePart> parts = new LinkedHashMap<>(is);
        parts.put(place, part);
        return new FittingBox(empty, was, parts);
    }

    /** Everything that a check says. */
    List<Judgement> judged(FitCheck check) {
        Fitted before = empty.with(was);
        return AskedChecks.of(check, before, before.with(is));
    }

    List<Judgement> judged(String check) {
        return judged(check(check));
    }

    /** The worst that a check says; empty where it says nothing. */
    Optional<Outcome> outcome(String check) {
        List<Outcome> outcomes = judged(check).stream().map(Judgement::outcome).toList();
        return Stream.of(Outcome.FAILS, Outcome.UNTOLD, Outcome.HOLDS)
                .filter(outcomes::contains)
                .findFirst();
    }

    static FitCheck check(String id) {
        return FitChecks.found().all().stream()
                .filter(check -> check.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no check '%s'".formatted(id)));
    }

    /** Every spot with facts, now. */
    Map<Spot, Collection<Fact>> facts() {
        Map<Spot, Collection<Fact>> all = new LinkedHashMap<>();
        is.forEach((place, part) -> {
            all.put(new Spot(place, ""), part.facts().all());
            part.features().forEach((feature, facts) -> all.put(new Spot(place, feature), facts.all()));
        });
        return all;
    }

    private static Map<String, CataloguePart> changed(
            Map<String, CataloguePart> parts, Spot spot, UnaryOperator<Facts> change) {
        if (!parts.containsKey(spot.place())) {
            throw new IllegalArgumentException("no part at '%s'".formatted(spot.place()));
        }
        Map<String, CataloguePart> changed = new LinkedHashMap<>(parts);
        changed.computeIfPresent(spot.place(), (place, part) -> changed(part, spot.feature(), change));
        return changed;
    }

    private static CataloguePart changed(CataloguePart part, String feature, UnaryOperator<Facts> change) {
        Map<String, Facts> features = new LinkedHashMap<>(part.features());
        if (!feature.isEmpty()) {
            features.put(feature, change.apply(part.feature(feature)));
        }
        Facts facts = feature.isEmpty() ? change.apply(part.facts()) : part.facts();
        return new CataloguePart(part.number(), part.kind(), part.name(), facts, features, part.note());
    }

    private static Path folder() {
        try {
            return Path.of(FittingBox.class.getResource("/fit-pack").toURI());
        } catch (URISyntaxException unusual) {
            throw new IllegalStateException(unusual);
        }
    }
}
