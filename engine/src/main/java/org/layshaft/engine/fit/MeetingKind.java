package org.layshaft.engine.fit;

import java.util.Locale;

/** How two places of a box meet. */
public enum MeetingKind {
    /** Two gears in mesh. */
    TEETH,
    /** A gear and the seat for it on its shaft. */
    SEAT,
    /** The clutching teeth of a gear and the splines of the sleeve that slides over them. */
    CLUTCHING,
    /** The cone of a gear and its blocking ring. */
    CONE,
    /** A blocking ring and the sleeve that passes it. */
    RING,
    /** A blocking ring and the hub whose keys turn it. */
    KEYS,
    /** The keys of a synchroniser and the slots of the hub that they lie in. */
    KEY,
    /** A sleeve and the hub it slides on. */
    SLIDING,
    /** A hub and the seat for it on its shaft. */
    HUB,
    /** A fork and the groove of the sleeve it moves. */
    FORK,
    /** A fork and the rail it sits on. */
    RAIL,
    BEARING_ON_SHAFT,
    BEARING_IN_CASE,
    /** A ring gear and the differential it is bolted to. */
    RING_GEAR,
    /** A half-shaft and the side gear it is pushed into. */
    HALF_SHAFT,
    /** The two gears of the speed reading. */
    SPEED_DRIVE,
    /** A shaft with the gears on it, and what keeps it from moving endways. */
    THRUST,
    /** A part and those that it is sold or used with; the place meets itself. */
    TOGETHER;

    /** As written: {@code bearing-in-case}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
