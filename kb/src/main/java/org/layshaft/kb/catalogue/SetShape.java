package org.layshaft.kb.catalogue;

import java.util.List;
import java.util.Locale;

/** What a set is made of, and so where it can stand. Each part of a set has a role in it. */
public enum SetShape {
    /** One part alone. */
    SINGLE("part"),
    /** Two gears in mesh. */
    PAIR("gear", "mate"),
    /** A gear, an idler and a gear. */
    TRAIN("driving", "idler", "driven"),
    /** What belongs to one sleeve; a ring stands toward the front or the rear of it. */
    SYNCHRONISER("sleeve", "hub", "front-ring", "rear-ring", "fork", "keys"),
    /** A shaft and what sits on it; the role of each part is its place in the layout, that of the shaft is shaft. */
    SHAFT("shaft"),
    /** Ring gear and pinion; with them, where it is in the set, the case of the differential. */
    FINAL_DRIVE("pinion", "ring-gear", "differential"),
    /** The two gears of the speed reading. */
    SPEED_DRIVE("driving", "driven");

    private final List<String> roles;

    SetShape(String... roles) {
        this.roles = List.of(roles);
    }

    /** The roles there can be; a set need not fill all. */
    public List<String> roles() {
        return roles;
    }

    /** Whether a part can have this role. */
    public boolean hasRole(String role) {
        return this == SHAFT || roles.contains(role);
    }

    /** As written in catalogues: {@code final-drive}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
