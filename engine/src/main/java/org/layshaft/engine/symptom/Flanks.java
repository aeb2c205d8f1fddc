package org.layshaft.engine.symptom;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which sign of torque on a gear loads which side of its teeth. */
final class Flanks {
    private final Map<String, Integer> drive = new HashMap<>();

    /** @param signs by gear the signs of its torques under a pulling engine, for each sound gear, forward before reverse */
    Flanks(List<Map<String, Set<Integer>>> signs) {
        signs.forEach(each -> each.forEach(
                (gear, ofGear) -> drive.putIfAbsent(gear, ofGear.iterator().next())));
    }

    /**
     * The loaded sides by gear.
     *
     * @param signs of the torques under a pulling engine
     * @param pulls whether it pulls
     * @param overruns whether the wheels drive it; both where it goes to and fro
     */
    Map<String, Set<Flank>> of(Map<String, Set<Integer>> signs, boolean pulls, boolean overruns) {
        Map<String, Set<Flank>> flanks = new HashMap<>();
        signs.forEach((gear, ofGear) -> {
            Set<Flank> loaded = EnumSet.noneOf(Flank.class);
            for (int sign : ofGear) {
                boolean asPulling = sign == drive.getOrDefault(gear, sign);
                if (pulls) {
                    loaded.add(asPulling ? Flank.DRIVE : Flank.COAST);
                }
                if (overruns) {
                    loaded.add(asPulling ? Flank.COAST : Flank.DRIVE);
                }
            }
            flanks.put(gear, loaded);
        });
        return flanks;
    }
}
