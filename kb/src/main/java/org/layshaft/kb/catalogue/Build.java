package org.layshaft.kb.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Which parts boxes of one layout were built with, within a range of serial numbers.
 *
 * @param id unique among all builds: {@code curlew-early}
 * @param layout id of the layout
 * @param name what it is called: {@code early Curlew}
 * @param fitted part numbers by place: the id of a part of the layout, or one of the two places of the speed drive. A
 *     gear that has none of its own is cut on the shaft that carries it.
 */
public record Build(String id, String layout, String name, SerialRange serials, Map<String, String> fitted) {
    /** The place of the gear that drives the speed reading. */
    public static final String SPEED_DRIVING = "speed-driving";

    /** The place of the gear that it drives. */
    public static final String SPEED_DRIVEN = "speed-driven";

    public Build {
        fitted = Collections.unmodifiableMap(new LinkedHashMap<>(fitted));
    }
}
