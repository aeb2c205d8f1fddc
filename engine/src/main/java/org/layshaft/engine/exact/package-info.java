/** Exact numbers. */
package org.layshaft.engine.exact;
