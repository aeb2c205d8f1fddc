package org.layshaft.kb.start;

/**
 * A layout to start from, as small as its family allows.
 *
 * @param id of the layout
 * @param says what family it is of, in a line
 * @param text the whole layout file, comments included
 */
public record Start(String id, String says, String text) {}
