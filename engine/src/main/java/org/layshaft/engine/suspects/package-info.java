/**
 * Back from what is noticed to what may be wrong: every fault of the dictionary held against the evidence, ranked, with the
 * next test.
 */
package org.layshaft.engine.suspects;
