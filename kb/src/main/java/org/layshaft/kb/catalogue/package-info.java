/** Parts that can be had: what is known of each, which are sold together, which stand where, which replace which. */
package org.layshaft.kb.catalogue;
