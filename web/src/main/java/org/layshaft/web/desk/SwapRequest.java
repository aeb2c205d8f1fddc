package org.layshaft.web.desk;

import java.util.Optional;

/**
 * What somebody would change, as written. Whatever is empty stays as it is.
 *
 * @param box id or name of a layout or a build
 * @param serial serial number of the box
 * @param set number or name of a set or part to put in
 * @param place where it goes; empty for where it serves best
 * @param tyre other tyre: {@code 205/55 R16}
 * @param wasTyre the tyre before, where the layout's own is not meant
 * @param axle other axle ratio
 * @param drive speedometer gears before and after: {@code 8/17 8/18}
 * @param cruise road speed in km/h that engine speeds are told at
 * @param shift engine speed at which one shifts up, in rpm
 * @param torque on the input, in N·m
 */
public record SwapRequest(
        Optional<String> box,
        Optional<String> serial,
        Optional<String> set,
        Optional<String> place,
        Optional<String> tyre,
        Optional<String> wasTyre,
        Optional<String> axle,
        Optional<String> drive,
        Optional<String> cruise,
        Optional<String> shift,
        Optional<String> torque) {

    /** Of this box, with nothing changed. */
    public static SwapRequest of(String box) {
        Optional<String> same = Optional.empty();
        return new SwapRequest(Optional.of(box), same, same, same, same, same, same, same, same, same, same);
    }

    public SwapRequest putting(String number) {
        return new SwapRequest(
                box, serial, Optional.of(number), place, tyre, wasTyre, axle, drive, cruise, shift, torque);
    }

    /** On this tyre instead of that. */
    public SwapRequest onTyre(Optional<String> before, String after) {
        return new SwapRequest(box, serial, set, place, Optional.of(after), before, axle, drive, cruise, shift, torque);
    }

    public SwapRequest at(String where) {
        return new SwapRequest(box, serial, set, Optional.of(where), tyre, wasTyre, axle, drive, cruise, shift, torque);
    }

    public SwapRequest onAxle(String ratio) {
        return new SwapRequest(
                box, serial, set, place, tyre, wasTyre, Optional.of(ratio), drive, cruise, shift, torque);
    }

    /** @param kmh road speed; empty for none */
    public SwapRequest cruising(Optional<String> kmh) {
        return new SwapRequest(box, serial, set, place, tyre, wasTyre, axle, drive, kmh, shift, torque);
    }
}
