/** Bodies and the linear equations between their speeds: what a layout is to the arithmetic. */
package org.layshaft.engine.train;
