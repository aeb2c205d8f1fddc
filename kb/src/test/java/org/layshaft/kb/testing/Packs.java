package org.layshaft.kb.testing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.layshaft.kb.finding.Finding;

/** Packs to break. */
public final class Packs {
    private Packs() {}

    /** Copies a folder, and returns the copy. */
    public static Path copy(Path folder, Path to) throws IOException {
        for (Path file : files(folder)) {
            Path copy = to.resolve(folder.relativize(file).toString());
            Files.createDirectories(copy.getParent());
            Files.copy(file, copy);
        }
        return to;
    }

    /** Puts a folder into a jar, under this prefix, and returns the jar. */
    public static Path jar(Path folder, Path jar, String prefix) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Path file : files(folder)) {
                zip.putNextEntry(
                        new ZipEntry(prefix + folder.relativize(file).toString().replace('\\', '/')));
                Files.copy(file, zip);
            }
        }
        return jar;
    }

    public static String manifest(String id) {
        return "{ \"format\": \"layshaft/pack/1\", \"id\": \"%s\", \"version\": \"1\", \"title\": \"Some\" }"
                .formatted(id);
    }

    /** What was found in a pack, each as file in it, line and sentence. */
    public static List<String> told(Path pack, List<Finding> findings) {
        return findings.stream()
                .map(finding ->
                        "%s %d %s".formatted(finding.file().replace(pack + "/", ""), finding.line(), finding.what()))
                .toList();
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
