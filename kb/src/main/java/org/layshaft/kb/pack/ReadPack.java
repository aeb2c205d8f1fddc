package org.layshaft.kb.pack;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.reading.Located;
import org.layshaft.kb.reading.ReadCatalogue;
import org.layshaft.kb.reading.Word;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.words.Phrase;

/**
 * A pack as read, sound or broken.
 *
 * @param manifest empty where there is none that can be read, or where a layout file was read by itself
 * @param layouts as typed
 * @param notices every mention of a notice by its id in a failure mode
 * @param sorts every mention of a notice by its id as what another is a sort of
 * @param catalogue all its catalogues together
 * @param reports one for each of its files, still open for findings that only show beside other packs
 * @param unopened what was found before any file was read
 */
record ReadPack(
        Optional<Located<Pack>> manifest,
        List<Located<TypedLayout>> layouts,
        List<Located<FailureMode>> modes,
        List<Located<String>> notices,
        List<Located<String>> sorts,
        List<Located<Word>> words,
        List<Phrase> phrases,
        ReadCatalogue catalogue,
        List<Report> reports,
        List<Finding> unopened) {

    /** Empty where the manifest gives none. */
    Optional<String> id() {
        return manifest.map(read -> read.value().id());
    }

    boolean isSound() {
        return findings().stream().noneMatch(finding -> finding.grade() == Finding.Grade.BROKEN);
    }

    /** By file and line; of one line, in the order found. */
    List<Finding> findings() {
        Stream<Finding> inFiles = reports.stream().flatMap(report -> report.findings().stream());
        return Stream.concat(unopened.stream(), inFiles)
                .sorted(Comparator.comparing(Finding::file).thenComparing(Finding::line))
                .toList();
    }
}
