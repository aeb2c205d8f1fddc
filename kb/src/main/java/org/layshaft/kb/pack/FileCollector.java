package org.layshaft.kb.pack;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;

/** Collects the files of a pack from its root, in a folder or inside a jar, in the order of their names. */
final class FileCollector {
    static final String MANIFEST = "pack.json";

    private final String shownRoot;
    private final List<PackFile> files = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /** @param shownRoot the root as the reader knows it, with its closing slash */
    FileCollector(String shownRoot) {
        this.shownRoot = shownRoot;
    }

    PackFiles collect(String from, Path root) {
        if (Files.exists(root.resolve(MANIFEST))) {
            take(FileKind.MANIFEST, root.resolve(MANIFEST), shownRoot + MANIFEST);
        } else {
            tell(
                    shownRoot + MANIFEST,
                    "The pack has no %s.".formatted(MANIFEST),
                    "Add one that says format, id, version and title.");
        }
        for (FileKind kind : FileKind.inFolders()) {
            Path folder = root.resolve(kind.folder());
            if (Files.isDirectory(folder)) {
                String shownFolder = shownRoot + kind.folder() + "/";
                jsonFilesIn(folder, shownFolder).forEach(file -> take(kind, file, shownFolder + plainName(file)));
            }
        }
        tellUnreadFolders(root);
        tellUnreadFiles(root);
        return new PackFiles(from, files, findings);
    }

    /** One layout file by itself, which is in no pack. */
    PackFiles collectLayout(Path file) {
        take(FileKind.LAYOUT, file, file.toString());
        return new PackFiles(file.toString(), files, findings);
    }

    private void take(FileKind kind, Path file, String shown) {
        try (InputStream in = Files.newInputStream(file)) {
            files.add(new PackFile(kind, shown, in.readNBytes(DocumentReader.LARGEST_BYTES + 1)));
        } catch (IOException | RuntimeException unreadable) {
            tell(shown, "The file cannot be opened.", "Look whether it is there and may be read.");
        }
    }

    private void tellUnreadFolders(Path root) {
        List<String> read = FileKind.folders();
        for (Path folder : sorted(root, shownRoot)) {
            String name = plainName(folder);
            if (Files.isDirectory(folder)
                    && !read.contains(name)
                    && !jsonFilesIn(folder, shownRoot + name).isEmpty()) {
                Report report = Report.on(shownRoot + name);
                report.doubtful(
                        "",
                        "Nothing in this folder is read: no kind of file has a folder of this name.",
                        name,
                        Nearest.advice(name, read));
                findings.addAll(report.findings());
            }
        }
    }

    private void tellUnreadFiles(Path root) {
        for (Path file : jsonFilesIn(root, shownRoot)) {
            if (!plainName(file).equals(MANIFEST)) {
                Report report = Report.on(shownRoot + plainName(file));
                report.doubtful(
                        "",
                        "This file is not read: only %s stands at the top of a pack.".formatted(MANIFEST),
                        plainName(file),
                        "Move it into the folder of its kind, 'layouts' for a layout.");
                findings.addAll(report.findings());
            }
        }
    }

    private List<Path> jsonFilesIn(Path folder, String shown) {
        return sorted(folder, shown).stream()
                .filter(file -> plainName(file).endsWith(".json"))
                .filter(file -> !plainName(file).startsWith("."))
                .filter(Files::isRegularFile)
                .toList();
    }

    private List<Path> sorted(Path folder, String shown) {
        List<Path> sorted = new ArrayList<>();
        try (DirectoryStream<Path> children = Files.newDirectoryStream(folder)) {
            children.forEach(sorted::add);
        } catch (IOException | RuntimeException unreadable) {
            tell(shown, "The folder cannot be listed.", "Look whether it may be read.");
        }
        sorted.sort(Comparator.comparing(FileCollector::plainName));
        return sorted;
    }

    private void tell(String shown, String what, String advice) {
        Report report = Report.on(shown);
        report.broken("", what, shown, advice);
        findings.addAll(report.findings());
    }

    /** Folders inside a jar end in a slash. */
    private static String plainName(Path path) {
        return path.getFileName().toString().replaceFirst("/$", "");
    }
}
