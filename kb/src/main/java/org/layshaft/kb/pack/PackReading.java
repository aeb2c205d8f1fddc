package org.layshaft.kb.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.json.Document;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.json.Item;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.json.Schemas;
import org.layshaft.kb.reading.CatalogueReading;
import org.layshaft.kb.reading.FailureModesReading;
import org.layshaft.kb.reading.Located;
import org.layshaft.kb.reading.ReadCatalogue;
import org.layshaft.kb.reading.Word;
import org.layshaft.kb.reading.WordsReading;
import org.layshaft.kb.typed.LayoutReading;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.words.Phrase;

/** Reads the files of one pack. Not thread-safe. */
final class PackReading {
    private final String from;
    private final List<Located<TypedLayout>> layouts = new ArrayList<>();
    private final List<Located<FailureMode>> modes = new ArrayList<>();
    private final List<Located<String>> notices = new ArrayList<>();
    private final List<Located<String>> sorts = new ArrayList<>();
    private final List<Located<Word>> words = new ArrayList<>();
    private final List<Phrase> phrases = new ArrayList<>();
    private ReadCatalogue catalogue = ReadCatalogue.NOTHING;
    private final List<Report> reports = new ArrayList<>();
    private Optional<Located<Pack>> manifest = Optional.empty();

    private PackReading(String from) {
        this.from = from;
    }

    static ReadPack of(PackFiles files) {
        PackReading reading = new PackReading(files.from());
        files.files().forEach(reading::read);
        return new ReadPack(
                reading.manifest,
                reading.layouts,
                reading.modes,
                reading.notices,
                reading.sorts,
                reading.words,
                reading.phrases,
                reading.catalogue,
                reading.reports,
                files.findings());
    }

    private void read(PackFile file) {
        DocumentReader.Read read = DocumentReader.read(file.name(), file.bytes());
        reports.add(read.report());
        read.document().ifPresent(document -> {
            Schemas.check(file.kind().schema(), document, read.report());
            take(file.kind(), document, read.report());
        });
    }

    private void take(FileKind kind, Document document, Report report) {
        switch (kind) {
            case MANIFEST -> manifest = Optional.of(manifest(document, report));
            case LAYOUT -> layouts.add(layout(document, report));
            case FAILURE_MODES -> {
                modes.addAll(FailureModesReading.of(document, report));
                notices.addAll(FailureModesReading.notices(document, report));
            }
            case WORDS -> {
                words.addAll(WordsReading.words(document, report));
                sorts.addAll(WordsReading.sorts(document, report));
            }
            case PHRASES -> phrases.addAll(WordsReading.phrases(document, report));
            case CATALOGUE -> catalogue = catalogue.and(CatalogueReading.of(document, report));
        }
    }

    private Located<Pack> manifest(Document document, Report report) {
        Item item = document.item();
        Pack pack = new Pack(
                item.get("id").text().orElse(""),
                item.get("version").text().orElse(""),
                item.get("title").text().orElse(""),
                from,
                List.of());
        return new Located<>(pack, document.file(), item.get("id").pointer(), report);
    }

    private static Located<TypedLayout> layout(Document document, Report report) {
        TypedLayout typed = LayoutReading.of(document.item());
        return new Located<>(typed, document.file(), typed.id().pointer(), report);
    }
}
