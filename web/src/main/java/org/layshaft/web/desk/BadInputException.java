package org.layshaft.web.desk;

import java.util.List;

/** Something given cannot be used. The message says what is wrong, the value, and what to do. */
public final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** What is the matter. */
    public enum Kind {
        /** What is needed was not given. */
        MISSING,
        /** It is too long, or cannot be read. */
        MALFORMED,
        /** It names something that is not known. */
        UNKNOWN,
        /** It can be read, and cannot stand. */
        UNFIT,
        /** The words of a question were not understood, or in more ways than one. */
        NOT_UNDERSTOOD
    }

    private final Kind kind;
    private final transient List<String> suggestions;

    /**
     * @param suggestions what could be meant, or would be answered, nearest first
     */
    public BadInputException(Kind kind, String message, List<String> suggestions) {
        super(message);
        this.kind = kind;
        this.suggestions = List.copyOf(suggestions);
    }

    public BadInputException(Kind kind, String message) {
        this(kind, message, List.of());
    }

    public Kind kind() {
        return kind;
    }

    public List<String> suggestions() {
        return suggestions;
    }
}
