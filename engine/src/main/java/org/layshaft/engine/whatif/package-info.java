/** What follows from faults: possibilities, facts for the rules, verdicts gathered, and checked by the equations. */
package org.layshaft.engine.whatif;
