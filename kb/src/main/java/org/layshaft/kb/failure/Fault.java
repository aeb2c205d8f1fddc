package org.layshaft.kb.failure;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A failure of one part of one layout.
 *
 * @param part id of the part
 * @param mode name of the failure mode, among those of the part's kind
 * @param told what is known of it: {@code side} to {@code front}; what is left out is not known
 */
public record Fault(String part, String mode, Map<String, String> told) {
    public Fault {
        told = Collections.unmodifiableMap(new TreeMap<>(told));
    }

    public static Fault of(String part, String mode) {
        return new Fault(part, mode, Map.of());
    }

    public Fault with(String what, String value) {
        Map<String, String> more = new TreeMap<>(told);
        more.put(what, value);
        return new Fault(part, mode, more);
    }

    /** As written in addresses and on the command line: {@code 3-4-fork bent side=front}. */
    public String written() {
        return told.entrySet().stream()
                .map(entry -> " " + entry.getKey() + "=" + entry.getValue())
                .collect(Collectors.joining("", part + " " + mode, ""));
    }
}
