/** Packs: where facts come from, and how all of them are read and put together. */
package org.layshaft.kb.pack;
