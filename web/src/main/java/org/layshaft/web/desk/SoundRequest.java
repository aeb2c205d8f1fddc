package org.layshaft.web.desk;

import java.util.Optional;

/**
 * What somebody wants to know of what a box sounds, as written. Nothing of it has been looked at.
 *
 * @param layout id of the layout
 * @param gear name of the gear, or N for neutral
 * @param rpm turns of the engine, and so of the input, a minute
 * @param kmh road speed in km/h, instead of the rpm; in neutral beside it
 * @param mph the same in mph
 * @param hz the frequency that was measured; without it the orders are only listed
 * @param within how far from it something may lie: {@code 2%} or {@code 5 Hz}
 * @param harmonics the highest multiple to look at
 * @param sidebands how many sidebands to look at, to either side
 */
public record SoundRequest(
        Optional<String> layout,
        Optional<String> gear,
        Optional<String> rpm,
        Optional<String> kmh,
        Optional<String> mph,
        Optional<String> hz,
        Optional<String> within,
        Optional<String> harmonics,
        Optional<String> sidebands) {

    /** Of this layout in this gear, at no speed that is told. */
    public static SoundRequest of(String layout, String gear) {
        Optional<String> none = Optional.empty();
        return new SoundRequest(Optional.of(layout), Optional.of(gear), none, none, none, none, none, none, none);
    }

    /** The same in this gear. */
    public SoundRequest inGear(String name) {
        return new SoundRequest(layout, Optional.of(name), rpm, kmh, mph, hz, within, harmonics, sidebands);
    }

    /** The same of this layout. */
    public SoundRequest ofLayout(String id) {
        return new SoundRequest(Optional.of(id), gear, rpm, kmh, mph, hz, within, harmonics, sidebands);
    }
}
