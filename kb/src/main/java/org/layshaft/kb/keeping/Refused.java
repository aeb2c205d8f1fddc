package org.layshaft.kb.keeping;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import org.layshaft.kb.keeping.ShelfException.Kind;

/** What the disk said, in words that tell what to do. */
final class Refused {
    private Refused() {}

    static ShelfException writing(Path file, IOException problem) {
        return new ShelfException(
                Kind.DISK,
                "\"%s\" could not be saved: %s What was there before is as it was.".formatted(file, because(problem)),
                problem);
    }

    static ShelfException reading(Path file, IOException problem) {
        return new ShelfException(Kind.DISK, "\"%s\" could not be read: %s".formatted(file, because(problem)), problem);
    }

    static ShelfException link(Path file) {
        return new ShelfException(
                Kind.DISK,
                "\"%s\" is a symbolic link, and links are not followed. Put the file or folder itself there."
                        .formatted(file));
    }

    private static String because(IOException problem) {
        String said = (problem instanceof FileSystemException file && file.getReason() != null
                        ? file.getReason()
                        : String.valueOf(problem.getMessage()))
                .toLowerCase(Locale.ROOT);
        if (said.contains("no space") || said.contains("disk full") || said.contains("not enough space")) {
            return "the disk is full. Make room and save again.";
        }
        if (said.contains("quota")) {
            return "the quota is used up. Make room and save again.";
        }
        if (said.contains("read-only") || problem.getCause() instanceof ReadOnlyFileSystemException) {
            return "the disk can only be read. Choose a folder on another with serve --write.";
        }
        if (problem instanceof AccessDeniedException || said.contains("permission denied")) {
            return "it may not be written or read by whoever runs Layshaft. Look at the rights of its folder.";
        }
        if (problem instanceof FileAlreadyExistsException || said.contains("not a directory")) {
            return "a file is where a folder is to be. Name another folder, or move the file away.";
        }
        return "the disk says \"%s\". Look whether its folder is still there.".formatted(said);
    }
}
