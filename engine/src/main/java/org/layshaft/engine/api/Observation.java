package org.layshaft.engine.api;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;

/**
 * Something looked out for, and noticed or not.
 *
 * @param notice id among the words' notices; a general one, {@code noise}, stands for each of its sorts
 * @param situation when; empty for at any time
 * @param gears by derived name; none where the situation is not in gear, or where it is not told in which gear: noticed in
 *     some gear, or not noticed in any; several: in each of them
 * @param seen whether it was noticed
 * @param heat how warm things were, where it is known
 */
public record Observation(
        String notice, Optional<Situation> situation, List<String> gears, boolean seen, Optional<Heat> heat) {
    public Observation {
        gears = List.copyOf(gears);
    }

    /** The same of these gears only. */
    public Observation in(List<String> some) {
        return new Observation(notice, situation, some, seen, heat);
    }

    /** As written in addresses: {@code pulling 3, 4: growls}, {@code hot neutral-pedal-down: not growls}. */
    public String written() {
        StringBuilder when = new StringBuilder();
        heat.ifPresent(warm -> when.append(warm.word()).append(' '));
        situation.ifPresent(at -> when.append(at.word()).append(' '));
        when.append(gears.stream().collect(Collectors.joining(", ")));
        String before = when.toString().strip();
        return (before.isEmpty() ? "" : before + ": ") + (seen ? "" : "not ") + notice;
    }
}
