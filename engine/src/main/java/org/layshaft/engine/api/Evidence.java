package org.layshaft.engine.api;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that is known of a complaint.
 *
 * @param observations what was looked out for
 * @param afterWork whether it began after the box, or something around it, had been apart
 */
public record Evidence(List<Observation> observations, boolean afterWork) {
    /** What stands for {@link #afterWork} where evidence is written. */
    public static final String AFTER_WORK = "after-work";

    public static final Evidence NONE = new Evidence(List.of(), false);

    public Evidence {
        observations = observations.stream().distinct().toList();
    }

    public Evidence with(Observation another) {
        return new Evidence(
                Stream.concat(observations.stream(), Stream.of(another)).toList(), afterWork);
    }

    public Stream<Observation> seen() {
        return observations.stream().filter(Observation::seen);
    }

    /** As written in addresses: {@code pulling 3: growls; neutral-pedal-down: not growls; after-work}. */
    public String written() {
        return Stream.concat(
                        observations.stream().map(Observation::written),
                        afterWork ? Stream.of(AFTER_WORK) : Stream.of())
                .collect(Collectors.joining("; "));
    }
}
