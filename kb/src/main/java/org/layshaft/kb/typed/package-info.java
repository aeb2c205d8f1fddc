/** A layout as a person typed it: base names, references not yet looked up, and where each stands in the file. */
package org.layshaft.kb.typed;
