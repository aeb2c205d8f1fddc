/** Whole small layouts, one for each family, to start a layout of one's own from. */
package org.layshaft.kb.start;
