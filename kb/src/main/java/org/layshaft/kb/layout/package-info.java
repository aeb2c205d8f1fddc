/**
 * A layout as facts: what turns, what meshes, what a fork moves, what keeps rails apart.
 *
 * <p>Nothing here is computed from motion; every record says only what a person typed, or what the layout format
 * supplies by default (a fork for each sleeve, needles under each free gear).
 */
package org.layshaft.kb.layout;
