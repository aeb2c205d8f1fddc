/**
 * The road: what a gearbox comes to between the engine and the tyres. Exact until it is shown, but for forces, in which
 * pi and square roots stand.
 */
package org.layshaft.engine.road;
