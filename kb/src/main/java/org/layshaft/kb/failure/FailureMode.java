package org.layshaft.kb.failure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Seat;

/**
 * One way in which one kind of part fails.
 *
 * @param name the plain trade word for it: {@code bent}; unique among the modes of its kind
 * @param also other words for it
 * @param seat for gears, the only seat it can befall; empty for any
 * @param unlessTold what one would have to know of the fault, with every value it may have; {@link #ANY_PLACE} as a
 *     value stands for every place along the shaft
 * @param basis what {@code common} rests on
 * @param confirm how it is confirmed
 * @param seenAt how far one must dismantle to see it
 * @param followsWork whether it comes of earlier work on the vehicle rather than of wear
 * @param cautions what to mind when working on it or driving on
 * @param leadsTo what it leads to if driven on
 * @param normal whether it is no failure at all, but how a sound part may behave
 */
public record FailureMode(
        PartKind befalls,
        String name,
        List<String> also,
        Optional<Seat> seat,
        Map<String, List<String>> unlessTold,
        List<Effect> effects,
        List<NoticeLine> noticed,
        Commonness common,
        String basis,
        String confirm,
        Depth seenAt,
        boolean followsWork,
        List<String> cautions,
        List<String> leadsTo,
        boolean normal) {

    /** In {@link #unlessTold}: every place along the shaft where it may be cut. */
    public static final String ANY_PLACE = "any place";

    public FailureMode {
        also = List.copyOf(also);
        unlessTold = Collections.unmodifiableMap(new LinkedHashMap<>(unlessTold));
        effects = List.copyOf(effects);
        noticed = List.copyOf(noticed);
        cautions = List.copyOf(cautions);
        leadsTo = List.copyOf(leadsTo);
    }

    /** Unique among all modes: {@code fork/bent}. */
    public String id() {
        return befalls.word() + "/" + name;
    }

    public boolean canBefall(Part part) {
        return part.kind() == befalls && (seat.isEmpty() || part instanceof Gear gear && gear.seat() == seat.get());
    }

    /** The name and every other word for it. */
    public List<String> words() {
        List<String> words = new ArrayList<>(also);
        words.add(0, name);
        return words;
    }
}
