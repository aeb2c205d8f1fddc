package org.layshaft.web.cli;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;
import org.layshaft.web.desk.BadInputException;

/** Loads packs: those on the class path first, then those in the folders given. */
final class Packs {
    private Packs() {}

    /** What the sound packs hold; everything broken in the others is written out. */
    static KnowledgeBase load(List<Path> folders, PrintWriter err) {
        Reading reading = read(folders);
        List<Finding> broken = reading.findings().stream()
                .filter(finding -> finding.grade() == Finding.Grade.BROKEN)
                .toList();
        if (!broken.isEmpty()) {
            err.println("A pack is broken, and nothing of it is loaded:");
            broken.forEach(finding -> err.println("  " + FindingText.of(finding)));
        }
        return reading.knowledge();
    }

    private static Reading read(List<Path> folders) {
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
        return PackReader.read(sources);
    }
}
