/**
 * A box drawn from the side, as SVG.
 *
 * <p>First everything gets its place ({@code Plan}: lines, columns, heights), then its figure ({@code Figures}), then it
 * is written. Lengths are drawing units, 1 unit being 1 px at full size, unless the name ends in {@code Mm}.
 *
 * <p>What turns about one axis shares a line ({@code Coaxial}, {@code Lines}); of shafts on one line some run through
 * others ({@code Nesting}), which are then hollow, or go round what stands inside them ({@code ShaftShape}). Planets lie
 * beside the line of their carrier ({@code Planets}), and an axle with a crown is turned into the plane ({@code Axle}).
 */
package org.layshaft.web.drawing;
