/**
 * What sounds at which frequency: everything in a box that repeats as it turns, how often for each turn of the input, and
 * which of it fits a frequency that was measured. Begins at {@link org.layshaft.engine.sound.Sounds}.
 *
 * <p>Orders are exact, but for bearings with a contact angle: its cosine is not rational, and stands as the nearest
 * double.
 */
package org.layshaft.engine.sound;
