/**
 * What changes when gears, tyres, axle ratio or speed-reading gears are changed, and which of them meet a wish. Begins at
 * {@link org.layshaft.engine.swap.Comparison} and {@link org.layshaft.engine.swap.WishSolver}. Ratios and speeds are
 * exact; forces, and what hangs on the shape of teeth, are not.
 */
package org.layshaft.engine.swap;
