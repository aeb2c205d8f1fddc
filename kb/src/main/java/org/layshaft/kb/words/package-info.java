/** The words of the trade: one thing's many names, what is noticed, and the shapes of questions. */
package org.layshaft.kb.words;
