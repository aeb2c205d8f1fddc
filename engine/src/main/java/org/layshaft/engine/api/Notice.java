package org.layshaft.engine.api;

/**
 * What a person notices.
 *
 * @param notice id among the words' notices: {@code jumps-out}
 * @param condition id among the words' conditions: {@code pulling}
 * @param says it in words
 * @param certain whether it holds in every possibility; if not, it may be noticed
 * @param because why
 */
public record Notice(String notice, String condition, String says, boolean certain, Reason because) {}
