package org.layshaft.kb.parts;

import org.layshaft.kb.layout.Part;

/**
 * A part, and where in the file it comes from.
 *
 * @param pointer JSON pointer of what was typed; for a derived part, of what it derives from
 */
public record BuiltPart(Part part, String pointer) {}
