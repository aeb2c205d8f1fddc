package org.layshaft.engine.api;

import java.util.List;

/**
 * What happens with the lever in neutral.
 *
 * @param exists whether there is a neutral at all: an axle drives whatever is selected
 * @param verdict {@code WORKS} where there is no drive, {@code LOST} where the output follows the input all the same
 * @param motion how everything turns in the first possibility, engine running, pedal up, vehicle standing
 */
public record NeutralVerdict(
        boolean exists,
        Verdict verdict,
        List<Notice> notices,
        List<Reason> because,
        List<Possibility> possibilities,
        Stance stance,
        Motion motion) {
    public NeutralVerdict {
        notices = List.copyOf(notices);
        because = List.copyOf(because);
        possibilities = List.copyOf(possibilities);
    }
}
