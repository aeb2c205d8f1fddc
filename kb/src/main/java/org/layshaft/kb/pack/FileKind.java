package org.layshaft.kb.pack;

import java.util.Arrays;
import java.util.List;

/** The kinds of file that a pack holds. */
enum FileKind {
    MANIFEST("", "pack"),
    LAYOUT("layouts", "layout"),
    FAILURE_MODES("failure-modes", "failure-modes"),
    WORDS("words", "words"),
    PHRASES("phrases", "phrases"),
    CATALOGUE("catalogues", "catalogue");

    private final String folder;
    private final String schema;

    FileKind(String folder, String schema) {
        this.folder = folder;
        this.schema = schema;
    }

    /** The folder in a pack whose every {@code .json} file is of this kind; empty for the manifest. */
    String folder() {
        return folder;
    }

    /** Name of the schema: {@code layout}. */
    String schema() {
        return schema;
    }

    /** The folders of a pack that are read. */
    static List<String> folders() {
        return inFolders().stream().map(FileKind::folder).toList();
    }

    /** Those that stand in a folder of their own. */
    static List<FileKind> inFolders() {
        return Arrays.stream(values()).filter(kind -> !kind.folder.isEmpty()).toList();
    }
}
