package org.layshaft.web.gallery;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.desk.BadInputException;

/** Finds layouts by what they are like. Thread-safe. */
public final class Gallery {
    private static final int LONGEST = 300;

    private final KnowledgeBase knowledge;
    private final Function<Layout, Box> boxes;

    /** @param boxes what a layout comes to */
    public Gallery(KnowledgeBase knowledge, Function<Layout, Box> boxes) {
        this.knowledge = knowledge;
        this.boxes = boxes;
    }

    /**
     * What was found.
     *
     * @param wanted what was made of the words
     * @param chosen properties that were chosen besides
     * @param speeds number of forward gears that was chosen besides; empty for any
     * @param all every layout that there is
     * @param found those of which all of it holds
     */
    public record Found(
            Wanted wanted, List<Property> chosen, Optional<Integer> speeds, List<Likeness> all, List<Likeness> found) {

        /** How many of those found this holds of. */
        public long with(Property property) {
            return found.stream().filter(property::holds).count();
        }

        /** By number of forward gears, how many of all that otherwise match. */
        public Map<Integer, Long> bySpeeds() {
            return all.stream()
                    .filter(this::holdsBut)
                    .collect(Collectors.groupingBy(Likeness::forward, TreeMap::new, Collectors.counting()));
        }

        private boolean holdsBut(Likeness likeness) {
            return wanted.terms().stream().allMatch(term -> term.holds().test(likeness))
                    && chosen.stream().allMatch(property -> property.holds(likeness));
        }
    }

    /** Throws {@link BadInputException} for a property or a number that is none. */
    public Found find(Optional<String> where, List<String> has, Optional<String> speeds) {
        where.filter(words -> words.length() > LONGEST).ifPresent(words -> {
            throw new BadInputException(
                    MALFORMED,
                    "What is looked for is %d characters long. Put it in at most %d."
                            .formatted(words.length(), LONGEST));
        });
        List<Property> chosen = has.stream().map(Gallery::property).distinct().toList();
        Optional<Integer> forward = speeds.map(Gallery::number);
        List<Likeness> all = likenesses();
        Wanted wanted = Wanted.read(
                where.orElse(""), all.stream().map(each -> each.layout().name()).toList());
        Found open = new Found(wanted, chosen, forward, all, List.of());
        return new Found(
                wanted,
                chosen,
                forward,
                all,
                all.stream()
                        .filter(open::holdsBut)
                        .filter(each -> forward.isEmpty() || forward.get() == each.forward())
                        .toList());
    }

    public Likeness likeness(Layout layout) {
        return Likeness.of(boxes.apply(layout));
    }

    private List<Likeness> likenesses() {
        return knowledge.layouts().values().stream().map(this::likeness).toList();
    }

    private static Property property(String word) {
        return Arrays.stream(Property.values())
                .filter(property -> property.word().equalsIgnoreCase(word.strip()))
                .findFirst()
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "Nothing that a layout can be or have is called \"%s\". There are: %s."
                                .formatted(
                                        word,
                                        Arrays.stream(Property.values())
                                                .map(Property::word)
                                                .collect(Collectors.joining(", ")))));
    }

    private static Integer number(String written) {
        if (!written.strip().matches("[0-9]{1,2}")) {
            throw new BadInputException(
                    MALFORMED,
                    "The number of forward gears \"%s\" cannot be read. Write it like this: 5".formatted(written));
        }
        return Integer.valueOf(written.strip());
    }
}
