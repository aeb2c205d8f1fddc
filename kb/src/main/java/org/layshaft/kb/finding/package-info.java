/** What is wrong, or doubtful, in what was typed. */
package org.layshaft.kb.finding;
