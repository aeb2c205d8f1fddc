package org.layshaft.kb.keeping;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.UUID;

/** Writes files so that at any moment there is the old one whole or the new one whole. */
final class WholeFile {
    /** What is being written ends so and begins with a full stop: no reader of packs looks at it. */
    private static final String UNFINISHED = ".saving";

    private final Disk disk;

    WholeFile(Disk disk) {
        this.disk = disk;
    }

    void write(Path file, byte[] bytes) throws IOException {
        Path unfinished = file.resolveSibling("." + file.getFileName() + "." + UUID.randomUUID() + UNFINISHED);
        try {
            disk.write(unfinished, bytes);
            disk.move(unfinished, file);
        } finally {
            Files.deleteIfExists(unfinished);
        }
        disk.settle(file.getParent());
    }

    /** Removes what a power cut left behind. Nobody may be writing there meanwhile. */
    static void sweep(Path folder) throws IOException {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".*" + UNFINISHED)) {
            for (Path file : left) {
                Files.deleteIfExists(file);
            }
        }
    }
}
