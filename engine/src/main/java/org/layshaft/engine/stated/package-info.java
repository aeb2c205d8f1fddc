/** What somebody states: what can be told from it, what is missing, what cannot be so. */
package org.layshaft.engine.stated;
