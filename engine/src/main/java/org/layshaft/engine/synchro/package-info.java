/**
 * Blocking-ring synchronisers: what the cone does, whether the chamfers block, how long it takes, and how worn it is.
 * Begins at {@link org.layshaft.engine.synchro.Cone}, {@link org.layshaft.engine.synchro.Blocking} and
 * {@link org.layshaft.engine.synchro.WearLimit}.
 */
package org.layshaft.engine.synchro;
