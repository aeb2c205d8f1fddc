/**
 * What one asks of the engine, and what it answers.
 *
 * <p>Those who ask need this package, the numbers of {@code engine.exact} and the names of {@code engine.words}, and
 * begin at {@code engine.Reasoners}. Everything else may change.
 */
package org.layshaft.engine.api;
