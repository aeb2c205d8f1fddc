/** Packs: where facts come from, and what is wrong with them. */
package org.layshaft.kb.pack;
