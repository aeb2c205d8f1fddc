/**
 * What teeth do to each other and to their shafts: forces at a mesh, thrust along a shaft, loads on its bearings.
 *
 * <p>The frame, for every shaft by itself: x along the shaft toward the rear, then two directions across it, up and, as
 * seen from the front, to the right. What turns clockwise is seen from the front too.
 */
package org.layshaft.engine.teeth;
