/** What can go wrong with a part, and what follows for the equations, for the shift mechanism and for the driver. */
package org.layshaft.kb.failure;
