/**
 * Involute splines to DIN 5480, ISO 4156 and ANSI B92.1: from designation to dimensions and back, and whether a shaft
 * enters a hub and carries torque there. Begins at {@link org.layshaft.engine.spline.SplineDesignation} and
 * {@link org.layshaft.engine.spline.SplineEntry}.
 */
package org.layshaft.engine.spline;
