package org.layshaft.engine.symptom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.fault.Possibilities;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/**
 * What every single fault of a layout shows, in every way that it may be: all parts, all gears, all situations. Immutable
 * and thread-safe; made once for each layout.
 */
public final class FaultDictionary {
    private final Sound sound;
    private final Cells cells;
    private final Symptoms symptoms;
    private final List<Entry> entries;

    private FaultDictionary(Sound sound, Cells cells, Symptoms symptoms, List<Entry> entries) {
        this.sound = sound;
        this.cells = cells;
        this.symptoms = symptoms;
        this.entries = List.copyOf(entries);
    }

    /**
     * A fault with everything told, and what it shows.
     */
    public static final class Entry {
        private final Told told;
        private final Shown shown;

        private Entry(Told told, Shown shown) {
            this.told = told;
            this.shown = shown;
        }

        public Fault fault() {
            return told.fault();
        }

        public FailureMode mode() {
            return told.mode();
        }

        public Part part() {
            return told.part();
        }

        public Shown shown() {
            return shown;
        }
    }

    public static FaultDictionary of(KnowledgeBase knowledge, Box box) {
        Sound sound = Sound.of(box);
        Cells cells = new Cells(
                sound.gearNames(), List.copyOf(knowledge.words().notices().keySet()));
        Symptoms symptoms = new Symptoms(sound, cells);
        List<Entry> entries = new ArrayList<>();
        for (Told told : allTold(knowledge, sound)) {
            entries.add(new Entry(told, symptoms.of(told)));
        }
        return new FaultDictionary(sound, cells, symptoms, entries);
    }

    public Layout layout() {
        return sound.layout();
    }

    public Sound sound() {
        return sound;
    }

    public Cells cells() {
        return cells;
    }

    /** Every fault in every way it may be, by part and by mode in the order of the layout and of the packs. */
    public List<Entry> entries() {
        return entries;
    }

    /** The entry of a fault with everything told; empty where it is told otherwise than any. */
    public Optional<Entry> entry(Fault fault) {
        return entries.stream().filter(entry -> entry.fault().equals(fault)).findFirst();
    }

    /** What several faults show together. */
    public Shown together(List<Entry> some) {
        return symptoms.of(some.stream().map(entry -> entry.told).toList());
    }

    /** What happens with each two entries. */
    public interface PairReader {
        void pair(Entry one, Entry other, Shown shown);
    }

    /**
     * Reckons every pair of entries of different parts, on all processors, and hands each to the reader, which must be
     * thread-safe.
     */
    public void everyPair(PairReader reader) {
        List<Entry> changing = entries.stream()
                .filter(entry -> !entry.told.effects().changeNothing())
                .toList();
        List<Entry> others = entries.stream()
                .filter(entry -> entry.told.effects().changeNothing())
                .toList();
        IntStream.range(0, others.size()).parallel().forEach(one -> {
            for (int other = one + 1; other < others.size(); other++) {
                Entry first = others.get(one);
                Entry second = others.get(other);
                if (areOfTwoParts(first, second)) {
                    reader.pair(first, second, first.shown.and(second.shown));
                }
            }
        });
        IntStream.range(0, changing.size()).parallel().forEach(one -> {
            Entry first = changing.get(one);
            World world = new World(sound, first.told.effects());
            for (Entry second : others) {
                if (areOfTwoParts(first, second)) {
                    reader.pair(first, second, symptoms.of(List.of(first.told, second.told), world));
                }
            }
            for (Entry second : changing.subList(one + 1, changing.size())) {
                if (areOfTwoParts(first, second)) {
                    reader.pair(first, second, together(List.of(first, second)));
                }
            }
        });
    }

    private static boolean areOfTwoParts(Entry one, Entry other) {
        return !one.fault().part().equals(other.fault().part());
    }

    private static List<Told> allTold(KnowledgeBase knowledge, Sound sound) {
        Layout layout = sound.layout();
        Possibilities possibilities = new Possibilities(layout);
        List<Told> all = new ArrayList<>();
        for (Part part : layout.parts().values()) {
            for (FailureMode mode : knowledge.failureModesOf(part)) {
                ways(possibilities, Fault.of(part.id(), mode.name()), mode, part)
                        .forEach(fault -> all.add(Told.of(sound, fault, mode)));
            }
        }
        return all;
    }

    /** None for a mode of which something is asked that this part has not, such as a place along a shaft with nothing on it. */
    private static List<Fault> ways(Possibilities possibilities, Fault fault, FailureMode mode, Part part) {
        boolean canBe = mode.unlessTold().keySet().stream()
                .noneMatch(
                        heading -> possibilities.valuesOf(part, mode, heading).isEmpty());
        return canBe
                ? possibilities.of(List.of(fault), List.of(mode)).stream()
                        .map(way -> way.get(0))
                        .toList()
                : List.of();
    }
}
