/** Figures over numbers, as SVG: each says in words what it shows, and tells nothing by colour alone. */
package org.layshaft.web.chart;
