package org.layshaft.engine.sound;

import java.util.List;

/**
 * Something that repeats while the box runs, and may be heard.
 *
 * @param parts ids of the parts it is about, the chief one first
 * @param what a sentence without its full stop: {@code the teeth of third gear and the cluster third gear meet}
 * @param how its order is computed, turns being those for one turn of the input: {@code 37 teeth × 24/47 turns of …}
 * @param loaded whether the power goes through it; else it only turns
 * @param beats what it may be louder and softer with, and so has sidebands at
 */
public record Source(
        SourceKind kind, List<String> parts, String what, String how, Order order, boolean loaded, List<Beat> beats) {
    public Source {
        parts = List.copyOf(parts);
        beats = List.copyOf(beats);
    }

    /**
     * What makes another sound swell and fade.
     *
     * @param part id of the part that turns
     * @param what {@code the turns of third gear}
     */
    public record Beat(String part, String what, Order order) {}
}
