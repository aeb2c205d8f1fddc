/** From somebody's words to a question: the words of a layout and of the packs, found in what was typed. */
package org.layshaft.web.asking.understanding;
