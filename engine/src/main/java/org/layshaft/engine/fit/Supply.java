package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.Interchange;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.kb.catalogue.Supersession;

/**
 * What is supplied today for a number, for boxes of some serial numbers.
 *
 * @param asked the number
 * @param steps what replaced it, one after another, as far as it can be followed
 * @param end how that ends
 * @param depending where it ends because part of the boxes have it so and part have not: the supersessions that decide
 * @param mayStandIn what the catalogue says may be used in place of the number asked for
 */
public record Supply(
        String asked, List<Supersession> steps, End end, List<Supersession> depending, List<Interchange> mayStandIn) {
    /** How a chain of supersessions ends. */
    public enum End {
        /** The last number is supplied. */
        SUPPLIED,
        /** The last number is no longer supplied, and nothing replaces it. */
        WITHDRAWN,
        /** Some of the boxes take one further number, others not: it depends on the serial number. */
        DEPENDS_ON_SERIAL
    }

    public Supply {
        steps = List.copyOf(steps);
        depending = List.copyOf(depending);
        mayStandIn = List.copyOf(mayStandIn);
    }

    /** The last number that can be told. */
    public String last() {
        return steps.stream().flatMap(step -> step.by().stream()).reduce(asked, (before, after) -> after);
    }

    /** What must come along with the last number, step by step. */
    public List<String> with() {
        return steps.stream().flatMap(step -> step.with().stream()).distinct().toList();
    }

    /** Follows the number through the supersessions that hold for all these boxes. */
    static Supply of(String asked, SerialRange boxes, Catalogue catalogue) {
        List<Supersession> steps = new ArrayList<>();
        Set<String> seen = new HashSet<>(Set.of(asked));
        String number = asked;
        End end = End.SUPPLIED;
        List<Supersession> depending = List.of();
        boolean goesOn = true;
        while (goesOn) {
            String now = number;
            List<Supersession> next = catalogue.supersessions().stream()
                    .filter(each -> each.was().equals(now) && each.serials().overlaps(boxes))
                    .toList();
            List<Supersession> certain =
                    next.stream().filter(each -> each.serials().covers(boxes)).toList();
            goesOn = false;
            if (certain.isEmpty() && !next.isEmpty()) {
                end = End.DEPENDS_ON_SERIAL;
                depending = next;
            } else if (!certain.isEmpty()) {
                Supersession step = certain.get(0);
                steps.add(step);
                end = step.by().isPresent() ? End.SUPPLIED : End.WITHDRAWN;
                number = step.by().orElse(number);
                goesOn = step.by().isPresent() && seen.add(number);
            }
        }
        List<Interchange> standIns = catalogue.interchanges().stream()
                .filter(each -> each.inPlaceOf().equals(asked))
                .toList();
        return new Supply(asked, steps, end, depending, standIns);
    }
}
