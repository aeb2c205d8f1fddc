/**
 * The road by equations from faults to what is noticed, for whole dictionaries of faults: the rules say the same of a few
 * faults at a time, with reasons.
 */
package org.layshaft.engine.symptom;
