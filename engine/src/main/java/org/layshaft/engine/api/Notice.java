package org.layshaft.engine.api;

/**
 * What a person notices.
 *
 * @param notice id among the words' notices: {@code jumps-out}
 * @param condition id among the words' conditions: {@code pulling}
 * @param says it in words
 * @param because why
 */
public record Notice(String notice, String condition, String says, Reason because) {}
