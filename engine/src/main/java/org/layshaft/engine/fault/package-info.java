/** Faults of one layout: which can be, in how many ways, and which gears the faulty part has a hand in. */
package org.layshaft.engine.fault;
