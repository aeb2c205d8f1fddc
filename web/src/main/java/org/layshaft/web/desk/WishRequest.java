package org.layshaft.web.desk;

import java.util.Optional;

/**
 * What somebody wishes, as written.
 *
 * @param box id or name of a layout or a build
 * @param serial serial number of the box
 * @param kind word of a {@link WishKind}
 * @param gear that is to change, by its name: {@code 3}; for engine speeds, the highest where none is given
 * @param value the ratio, the step, the per cent, or the rpm that is wished for
 * @param other gear that is to be nearer, or that the step is to
 * @param at road speed in km/h
 * @param within by how many per cent of the ratio the wish may be missed; 2 where nothing is given
 * @param centre centre distance in mm, where the catalogue does not tell it
 * @param axle axle ratio that goes in, for the speed reading
 * @param tyre other tyre that goes on
 * @param wasTyre the tyre before, where the layout's own is not meant
 */
public record WishRequest(
        Optional<String> box,
        Optional<String> serial,
        Optional<String> kind,
        Optional<String> gear,
        Optional<String> value,
        Optional<String> other,
        Optional<String> at,
        Optional<String> within,
        Optional<String> centre,
        Optional<String> axle,
        Optional<String> tyre,
        Optional<String> wasTyre) {
    private static final Optional<String> NONE = Optional.empty();

    /** Of this box, without anything more told of the wish. */
    public static WishRequest of(String box, WishKind kind) {
        return new WishRequest(
                Optional.of(box), NONE, Optional.of(kind.word()), NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE);
    }

    /** Whether nothing is wished. */
    public boolean isEmpty() {
        return kind.isEmpty();
    }

    public WishRequest ofGear(Optional<String> name) {
        return new WishRequest(box, serial, kind, name, value, other, at, within, centre, axle, tyre, wasTyre);
    }

    public WishRequest to(String gearOfTheStep) {
        return new WishRequest(
                box, serial, kind, gear, value, Optional.of(gearOfTheStep), at, within, centre, axle, tyre, wasTyre);
    }

    public WishRequest coming(String number) {
        return new WishRequest(
                box, serial, kind, gear, Optional.of(number), other, at, within, centre, axle, tyre, wasTyre);
    }

    /** @param kmh road speed */
    public WishRequest atSpeed(String kmh) {
        return new WishRequest(
                box, serial, kind, gear, value, other, Optional.of(kmh), within, centre, axle, tyre, wasTyre);
    }

    /** On another axle, other tyres, or both. */
    public WishRequest with(Optional<String> axleRatio, Optional<String> tyres, Optional<String> tyresBefore) {
        return new WishRequest(
                box, serial, kind, gear, value, other, at, within, centre, axleRatio, tyres, tyresBefore);
    }
}
