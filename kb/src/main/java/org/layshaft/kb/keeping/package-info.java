/** Layouts of one's own on disk: saved whole or not at all, each version kept, and nothing of anybody's lost. */
package org.layshaft.kb.keeping;
