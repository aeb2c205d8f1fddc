/**
 * A box drawn from the side, as SVG.
 *
 * <p>First everything gets its place ({@code Plan}: lines, columns, heights), then its figure ({@code Figures}), then it
 * is written. Lengths are drawing units, 1 unit being 1 px at full size, unless the name ends in {@code Mm}.
 */
package org.layshaft.web.drawing;
