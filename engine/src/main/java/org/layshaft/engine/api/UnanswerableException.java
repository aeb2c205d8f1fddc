package org.layshaft.engine.api;

/** A question that cannot stand; the message says why, the value, and what to do. */
public final class UnanswerableException extends RuntimeException {
    public UnanswerableException(String message) {
        super(message);
    }
}
