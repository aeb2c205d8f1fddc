package org.layshaft.kb.typed;

/**
 * A mention of something by its id, which may or may not exist.
 *
 * @param pointer JSON pointer of the mention
 */
public record Reference(String id, String pointer) {}
