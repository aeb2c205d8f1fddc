package org.layshaft.engine.api;

import java.util.List;
import org.layshaft.engine.exact.Fraction;

/**
 * What becomes of one gear.
 *
 * @param gear its derived name: {@code 3}, {@code R}
 * @param direction which way it takes the vehicle when all is sound
 * @param ratio its ratio when all is sound, always positive
 * @param path bodies from input to output, in order; empty unless it drives in every possibility
 * @param notices what is noticed; {@link Notice#certain()} where it is in every possibility
 * @param because the reasons, in every possibility
 * @param possibilities the ways things may be; more than one only where something is not known of a fault, and
 *     it matters to this gear
 * @param stance where sleeves and sliding gears stand with this gear selected, in the first possibility
 * @param motion how everything turns then
 */
public record GearVerdict(
        String gear,
        Verdict verdict,
        Direction direction,
        Fraction ratio,
        List<PathStep> path,
        List<Notice> notices,
        List<Reason> because,
        List<Possibility> possibilities,
        Stance stance,
        Motion motion) {
    public GearVerdict {
        path = List.copyOf(path);
        notices = List.copyOf(notices);
        because = List.copyOf(because);
        possibilities = List.copyOf(possibilities);
    }
}
