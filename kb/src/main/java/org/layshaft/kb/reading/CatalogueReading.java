package org.layshaft.kb.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.ComponentKind;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.Interchange;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.kb.catalogue.SetShape;
import org.layshaft.kb.catalogue.Supersession;
import org.layshaft.kb.json.Document;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Report;

/** Reads a catalogue. What a value of the wrong type says is left out: the schema has told of it. */
public final class CatalogueReading {
    private final Document document;
    private final Report report;

    private CatalogueReading(Document document, Report report) {
        this.document = document;
        this.report = report;
    }

    public static ReadCatalogue of(Document document, Report report) {
        return new CatalogueReading(document, report).read();
    }

    private ReadCatalogue read() {
        Item file = document.item();
        return new ReadCatalogue(
                each(file.get("parts"), this::part),
                each(file.get("sets"), this::set),
                each(file.get("builds"), CatalogueReading::build),
                listed(file.get("supersessions"), CatalogueReading::supersession),
                listed(file.get("interchanges"), CatalogueReading::interchange));
    }

    private Optional<CataloguePart> part(String number, Item item) {
        return word(item.get("kind"), ComponentKind.values(), ComponentKind::word)
                .map(kind -> {
                    Map<String, Facts> features = new LinkedHashMap<>();
                    item.get("features").entries().forEach((place, feature) -> features.put(place, facts(feature)));
                    CataloguePart part = new CataloguePart(
                            number,
                            kind,
                            item.get("name").text().orElse(kind.spoken()),
                            facts(item),
                            features,
                            note(item));
                    return Measured.in(part, item.get("measured").items(), report);
                });
    }

    private static Facts facts(Item item) {
        List<Fact> facts = new ArrayList<>();
        for (FactName name : FactName.values()) {
            Item value = item.get(name.section().word()).get(name.key());
            if (name.unit().isPresent()) {
                value.decimal()
                        .ifPresent(number ->
                                facts.add(new Fact(name, number.toPlainString(), number.doubleValue(), false)));
            } else {
                value.text()
                        .filter(text -> name.words().isEmpty() || name.words().contains(text))
                        .ifPresent(text -> facts.add(Fact.of(name, text)));
            }
        }
        return Facts.of(facts);
    }

    private Optional<PartSet> set(String number, Item item) {
        return word(item.get("shape"), SetShape.values(), SetShape::word)
                .map(shape -> new PartSet(
                        number,
                        item.get("name").text().orElse(number),
                        shape,
                        texts(item.get("parts")),
                        item.get("only_whole").truth().orElse(false),
                        item.get("one_design").truth().orElse(false),
                        note(item)));
    }

    private static Optional<Build> build(String id, Item item) {
        return item.get("layout")
                .text()
                .map(layout -> new Build(
                        id, layout, item.get("name").text().orElse(id), serials(item), texts(item.get("fitted"))));
    }

    private static Optional<Supersession> supersession(Item item) {
        return item.get("was")
                .text()
                .map(was -> new Supersession(
                        was,
                        item.get("by").text(),
                        serials(item),
                        item.get("with").texts(),
                        note(item)));
    }

    private static Optional<Interchange> interchange(Item item) {
        return item.get("use")
                .text()
                .flatMap(use -> item.get("in_place_of")
                        .text()
                        .map(was -> new Interchange(use, was, item.get("with").texts(), note(item))));
    }

    private static SerialRange serials(Item item) {
        Item serials = item.get("serials");
        return new SerialRange(serials.get("from").whole(), serials.get("to").whole());
    }

    private static String note(Item item) {
        return item.get("note").text().orElse("");
    }

    private static Map<String, String> texts(Item item) {
        Map<String, String> texts = new LinkedHashMap<>();
        item.entries().forEach((key, value) -> value.text().ifPresent(text -> texts.put(key, text)));
        return texts;
    }

    private static <E> Optional<E> word(Item item, E[] values, Function<E, String> spelling) {
        return item.text()
                .flatMap(text -> Arrays.stream(values)
                        .filter(value -> spelling.apply(value).equals(text))
                        .findFirst());
    }

    /** Reads a value that stands under a key. */
    private interface Keyed<T> {
        Optional<T> read(String key, Item item);
    }

    private <T> List<Located<T>> each(Item items, Keyed<T> reading) {
        List<Located<T>> read = new ArrayList<>();
        items.entries()
                .forEach((key, item) -> reading.read(key, item).ifPresent(value -> read.add(located(value, item))));
        return read;
    }

    private <T> List<Located<T>> listed(Item items, Function<Item, Optional<T>> reading) {
        List<Located<T>> read = new ArrayList<>();
        items.items().forEach(item -> reading.apply(item).ifPresent(value -> read.add(located(value, item))));
        return read;
    }

    private <T> Located<T> located(T value, Item item) {
        return new Located<>(value, document.file(), item.pointer(), report);
    }
}
