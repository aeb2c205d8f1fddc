package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Evidence;

/**
 * A diagnosis, all of which stands in its address, and what a form adds to it.
 *
 * @param layout id of the layout
 * @param seen what was noticed so far, as written
 * @param words more of it, typed
 * @param notice more of it, chosen: what was noticed or not
 * @param noticed {@code no} where it was not
 * @param when the situation
 * @param gears in which gears
 * @param heat {@code cold} or {@code hot}
 * @param work whether it began after earlier work
 * @param saved a diagnosis put away before, pasted whole
 */
public record SuspectsRequest(
        Optional<String> layout,
        List<String> seen,
        Optional<String> words,
        Optional<String> notice,
        Optional<String> noticed,
        Optional<String> when,
        List<String> gears,
        Optional<String> heat,
        Optional<String> work,
        Optional<String> saved) {
    public SuspectsRequest {
        seen = List.copyOf(seen);
        gears = List.copyOf(gears);
    }

    /** What a form adds, as written. */
    List<String> added() {
        return Stream.of(words, notice.map(this::chosen), work.map(any -> Evidence.AFTER_WORK))
                .flatMap(Optional::stream)
                .toList();
    }

    private String chosen(String what) {
        String before = Stream.of(heat.stream(), when.stream(), Stream.of(String.join(", ", gears)))
                .flatMap(each -> each)
                .filter(each -> !each.isEmpty())
                .collect(Collectors.joining(" "));
        String not = noticed.filter("no"::equals).isPresent() ? "not " : "";
        return (before.isEmpty() ? "" : before + ": ") + not + what;
    }
}
