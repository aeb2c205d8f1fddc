/** The rules: where they are loaded, run in stages, and their conclusions kept with their premises. */
package org.layshaft.engine.rules;
