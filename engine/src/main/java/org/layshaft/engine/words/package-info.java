/** Names and numbers in plain English of the trade. */
package org.layshaft.engine.words;
