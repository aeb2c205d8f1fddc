/**
 * What one asks of the engine, and what it answers.
 *
 * <p>Those who ask need this package, the numbers of {@code engine.exact} and the names of {@code engine.words}, and
 * begin at {@code engine.Reasoners}; for the road they need {@code engine.road} and {@code engine.stated}, and begin at
 * {@code Vehicle}. Everything else may change.
 */
package org.layshaft.engine.api;
