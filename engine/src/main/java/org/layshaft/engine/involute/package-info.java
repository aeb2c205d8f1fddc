/**
 * Involute gears and pairs on parallel axes, external and internal, straight and helical, to the relations of ISO 21771.
 * Begins at {@link org.layshaft.engine.involute.InvoluteGear} and {@link org.layshaft.engine.involute.InvolutePair}.
 *
 * <p>The profile shift counts away from the gear's own axis for internal teeth as for external ones: a positive one
 * makes every diameter larger. ISO 21771 counts that of an internal gear the other way round.
 */
package org.layshaft.engine.involute;
