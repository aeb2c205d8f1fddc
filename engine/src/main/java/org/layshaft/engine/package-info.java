/** The engine's front door. */
package org.layshaft.engine;
