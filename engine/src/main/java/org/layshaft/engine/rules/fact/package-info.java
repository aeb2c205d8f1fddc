/** The facts that rules read and draw: given by the layout and by faults, or concluded. */
package org.layshaft.engine.rules.fact;
