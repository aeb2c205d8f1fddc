/**
 * Whether a part or set serves in a place of a box: what meets there, what each check says of it, what else must come.
 * Begins at {@link org.layshaft.engine.fit.PartsCounter}; a check is a {@link org.layshaft.engine.fit.FitCheck}.
 */
package org.layshaft.engine.fit;
