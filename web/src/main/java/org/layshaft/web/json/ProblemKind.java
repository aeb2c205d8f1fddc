package org.layshaft.web.json;

import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.web.desk.BadInputException;

/** The kinds of refusal, each with the HTTP status that it has and a page that explains it. */
public enum ProblemKind {
    MISSING(
            400,
            "missing",
            "Something is missing",
            "What is needed for an answer was not given.",
            "Give it too: the refusal names it, with an example."),
    MALFORMED(
            400,
            "malformed",
            "Cannot be read",
            "What was given is not written as it must be, is too long, or there is too much of it.",
            "Write it as the refusal says."),
    NOT_HTTP(
            400,
            "not-http",
            "Not HTTP as it should be",
            "The request could not be read as HTTP, so nothing of it was looked at.",
            "Look at the address: everything but letters, digits and - . _ ~ is written percent-encoded in UTF-8."),
    FROM_ELSEWHERE(
            403,
            "from-elsewhere",
            "From another site",
            "A page of another site had a browser send this, and only our own pages may.",
            "Open Layshaft itself and send it from there. A program that is no browser sends no Origin."),
    NOT_ALLOWED(
            403,
            "not-allowed",
            "Not allowed",
            "Layshaft was started without a folder to save in, so nothing is ever written.",
            "Start it with serve --write and a folder of packs."),
    UNKNOWN(
            404,
            "unknown",
            "Not known",
            "Something that was named is in none of the packs that are loaded, or nothing stands at the address.",
            "See what is known: the layouts at /api/layouts, the words at /api/words, the parts at /api/parts."),
    METHOD(
            405,
            "method",
            "Not answered",
            "The address stands, but not for this HTTP method.",
            "Use one of those that the header Allow names."),
    OVERTAKEN(
            412,
            "overtaken",
            "Overtaken",
            "What is there is not what this was to replace: somebody saved it meanwhile, or it is gone.",
            "Read what is there, put both together, and send it with the tag of what you read."),
    TOO_LARGE(
            413,
            "too-large",
            "Too large",
            "The request carries more than is read here.",
            "Send less: a question has at most 500 characters."),
    TOO_LONG(
            414,
            "too-long",
            "Too long",
            "The address or the headers are longer than is read here.",
            "Ask a shorter question, or suppose fewer faults at once."),
    OTHER_TYPE(
            415,
            "other-type",
            "Not of this type",
            "What was sent is of another content type than is read here.",
            "Send it as the header Accept says."),
    OTHER_HOST(
            421,
            "other-host",
            "Another host",
            "What is sent here must be sent to this machine by its own name, so that no other name can be made to lead here.",
            "Send it to localhost."),
    UNFIT(
            422,
            "unfit",
            "Cannot be answered",
            "Everything could be read and is known, but it cannot stand together or is beyond what can be worked out.",
            "The refusal says which does not go with which; leave one out."),
    NOT_UNDERSTOOD(
            422,
            "not-understood",
            "Not understood",
            "The words were not understood, or could be understood in more ways than one.",
            "Take one of the suggestions, which are questions that will be answered, or name the parts as the layout does."),
    BROKEN(
            422,
            "broken",
            "Broken",
            "Something in the layout is broken, so that it would not be loaded.",
            "Put right what is found; each finding says where it is and what to do."),
    UNCONDITIONED(
            428,
            "unconditioned",
            "A condition is missing",
            "It was not said what this replaces, and nobody is to overwrite unknowingly.",
            "Give If-Match with the tag of what you read, or If-None-Match: * where nothing is to be there yet."),
    OUR_FAULT(
            500,
            "our-fault",
            "Our fault",
            "Something went wrong on our side; nothing that was asked is at fault.",
            "The trace stands in the console where Layshaft was started. Whoever runs it can send it to its makers."),
    NOT_SAVED(
            507,
            "not-saved",
            "Not saved",
            "The disk did not take it; what was there before is as it was.",
            "The refusal says why. Make room, or look at the rights of the folder, and send it again.");

    private final int status;
    private final String word;
    private final String title;
    private final String means;
    private final String remedy;

    ProblemKind(int status, String word, String title, String means, String remedy) {
        this.status = status;
        this.word = word;
        this.title = title;
        this.means = means;
        this.remedy = remedy;
    }

    public static ProblemKind of(BadInputException.Kind kind) {
        return switch (kind) {
            case MISSING -> MISSING;
            case MALFORMED -> MALFORMED;
            case UNKNOWN -> UNKNOWN;
            case UNFIT -> UNFIT;
            case NOT_UNDERSTOOD -> NOT_UNDERSTOOD;
        };
    }

    /** The kind that its address names: {@code not-understood}. */
    public static Optional<ProblemKind> named(String word) {
        return Stream.of(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** As in HTTP. */
    public int status() {
        return status;
    }

    /** Its name in its address. */
    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    /** What has happened, in a sentence. */
    public String means() {
        return means;
    }

    /** What to do, in a sentence. */
    public String remedy() {
        return remedy;
    }
}
