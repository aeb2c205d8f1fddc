package org.layshaft.web.cli;

import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.keeping.Shelf;
import org.layshaft.kb.keeping.ShelfException;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;
import org.layshaft.web.board.Library;
import org.layshaft.web.desk.BadInputException;

/** Loads packs: those on the class path first, then those in the folders given. */
final class Packs {
    private Packs() {}

    /** What the sound packs hold; everything broken in the others is written out. */
    static KnowledgeBase load(List<Path> folders, PrintWriter err) {
        Reading reading = PackReader.read(sources(folders));
        tellBroken(reading.findings(), err);
        return reading.knowledge();
    }

    /** The same, with a folder in which layouts can be saved, whose packs are read after the others. */
    static Library library(List<Path> folders, Optional<Path> written, PrintWriter err) {
        try {
            Library library = Library.over(sources(folders), written.map(Shelf::in));
            tellBroken(library.findings(), err);
            return library;
        } catch (ShelfException e) {
            throw new BadInputException(UNFIT, e.getMessage());
        }
    }

    private static void tellBroken(List<Finding> findings, PrintWriter err) {
        List<Finding> broken = findings.stream()
                .filter(finding -> finding.grade() == Finding.Grade.BROKEN)
                .toList();
        if (!broken.isEmpty()) {
            err.println("A pack is broken, and nothing of it is loaded:");
            broken.forEach(finding -> err.println("  " + FindingText.of(finding)));
        }
    }

    private static List<PackSource> sources(List<Path> folders) {
        List<PackSource> sources = new ArrayList<>(PackSource.onClassPath());
        for (Path folder : folders) {
            if (!Files.isDirectory(folder)) {
                throw new BadInputException(
                        UNKNOWN,
                        "There is no folder \"%s\". Give --packs a folder that holds packs.".formatted(folder));
            }
            List<PackSource> packs = PackSource.packsIn(folder);
            if (packs.isEmpty()) {
                throw new BadInputException(
                        UNKNOWN,
                        ("There is no pack in the folder \"%s\". A pack is a folder with a pack.json, or a jar; give --packs"
                                        + " a pack, or the folder that its folder stands in.")
                                .formatted(folder));
            }
            sources.addAll(packs);
        }
        return sources;
    }
}
