package org.layshaft.kb.keeping;

import java.time.Instant;

/**
 * An earlier version of a layout.
 *
 * @param version SHA-256 of its bytes, in hexadecimal
 * @param replaced when another took its place
 */
public record Earlier(String version, Instant replaced) {}
