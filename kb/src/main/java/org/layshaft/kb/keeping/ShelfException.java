package org.layshaft.kb.keeping;

/** Something cannot be kept or read; what was there before is as it was. The message says why and what to do. */
public final class ShelfException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** What is the matter. */
    public enum Kind {
        /** The name cannot be one of a file of ours. */
        NAME,
        /** The disk does not take it or does not give it. */
        DISK
    }

    private final Kind kind;

    ShelfException(Kind kind, String message) {
        super(message);
        this.kind = kind;
    }

    ShelfException(Kind kind, String message, Throwable cause) {
        super(message, cause);
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }
}
