/**
 * An unknown gear from what a bench can measure: which standard gears it may be, how well each fits, and what to measure
 * next. Begins at {@link org.layshaft.engine.identify.BenchGear}.
 */
package org.layshaft.engine.identify;
