package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;

/** Hears what is told of a failure beside its part and mode: which way, how far, where it was left, where it broke. */
final class Telling {
    private final Heard heard;
    private final Set<Integer> used;
    private final Set<String> refused = new HashSet<>();
    private Optional<Mention> refusedGear = Optional.empty();

    Telling(Heard heard, Set<Integer> used) {
        this.heard = heard;
        this.used = used;
    }

    /** Whether a side was told that this part has no gear on. */
    boolean refuses(String part) {
        return refused.contains(part);
    }

    /** The gear that a side was told by, where a part has none of that name on any. */
    Optional<Mention> refusedGear() {
        return refusedGear;
    }

    /** The failure with what is told of it; several where a place between two things is not just one. */
    List<Fault> told(Fault fault, FailureMode mode, FaultClue clue) {
        Fault told = before(before(fault, mode, clue.from()), mode, clue.mode().from());
        List<Fault> result = after(told, mode, clue.to());
        int inside = Math.min(clue.mode().to(), clue.part().to());
        boolean apart = inside < Math.max(clue.mode().from(), clue.part().from());
        return apart && result.equals(List.of(told)) ? after(told, mode, inside) : result;
    }

    private Fault before(Fault fault, FailureMode mode, int from) {
        Optional<Mention> said =
                heard.endingAt(from).filter(mention -> !mention.told().isEmpty());
        Optional<Fault> told = said.flatMap(mention -> value(fault, mode, mention));
        told.ifPresent(none -> use(said.get().from(), said.get().to()));
        return told.map(value -> joined(fault, value)).orElse(fault);
    }

    private List<Fault> after(Fault fault, FailureMode mode, int from) {
        Fault told = fault;
        int at = from;
        int links = from;
        while (at < heard.tokens().size()) {
            Optional<Mention> mention = heard.startingAt(at);
            if (mention.isPresent() && used.contains(at) && at == links) {
                at = mention.get().to();
                links = at;
                continue;
            }
            Optional<Fault> value = mention.flatMap(said -> value(fault, mode, said));
            if (value.isPresent()) {
                told = joined(told, value.get());
            } else if (mention.isPresent() && !isLinkHere(at, mode)) {
                Told found = meant(told, mode, mention.get(), links);
                if (found.isPlace()) {
                    use(links, found.to());
                    return found.faults();
                }
                if (found.faults().isEmpty() && !goesWith(told, mention.get())) {
                    return List.of(told);
                }
                told = found.faults().isEmpty() ? told : found.faults().get(0);
                if (found.faults().isEmpty() && mention.get().isGeneral()) {
                    at = mention.get().to();
                    continue;
                }
            } else if (isLinkHere(at, mode)) {
                at++;
                continue;
            } else {
                return List.of(told);
            }
            use(links, mention.get().to());
            at = mention.get().to();
            links = at;
        }
        return List.of(told);
    }

    private boolean isLinkHere(int at, FailureMode mode) {
        boolean and = heard.word(at).equals("and")
                && (heard.isLink(at + 1)
                        || heard.startingAt(at + 1)
                                .filter(next -> !next.told().isEmpty())
                                .isPresent());
        boolean inFront =
                mode.unlessTold().containsKey("place") && heard.word(at).equals("front");
        return heard.isLink(at) || and || inFront;
    }

    /** A part that the failed one sits on or goes with, or a general word such as "sleeve" on the way. */
    private boolean goesWith(Fault fault, Mention mention) {
        boolean aside = mention.isGeneral()
                || mention.isSpecificPart() && mention.gear().isEmpty();
        return aside && heard.words().belongings().belongs(fault.part(), mention);
    }

    /** A failure with one more thing told of it; what was told first holds. */
    private static Fault joined(Fault fault, Fault more) {
        String key = more.told().keySet().iterator().next();
        return fault.told().containsKey(key)
                ? fault
                : fault.with(key, more.told().get(key));
    }

    /** A value said outright: {@code badly}. */
    private Optional<Fault> value(Fault fault, FailureMode mode, Mention mention) {
        return mode.unlessTold().entrySet().stream()
                .flatMap(asked -> mention.told().stream()
                        .filter(asked.getValue()::contains)
                        .map(value -> Fault.of(fault.part(), fault.mode()).with(asked.getKey(), value)))
                .findFirst();
    }

    /**
     * A value said by a gear or a part.
     *
     * @param faults empty where the words tell nothing
     * @param to index after the last word that tells it
     */
    private record Told(List<Fault> faults, boolean isPlace, int to) {
        static final Told NOTHING = new Told(List.of(), false, 0);
    }

    private Told meant(Fault fault, FailureMode mode, Mention mention, int links) {
        List<String> between =
                IntStream.range(links, mention.from()).mapToObj(heard::word).toList();
        for (Map.Entry<String, List<String>> asked : mode.unlessTold().entrySet()) {
            if (fault.told().containsKey(asked.getKey())) {
                continue;
            }
            if (asked.getValue().contains(FailureMode.ANY_PLACE)) {
                return place(fault, asked.getKey(), mention, between);
            }
            boolean toward = between.contains("toward")
                    || between.contains("to")
                    || between.contains("into")
                    || heard.word(mention.to()).equals("side");
            boolean leftIn = toward || between.contains("in") || between.contains("at");
            boolean position = asked.getValue().contains("neutral");
            boolean ofSide = position
                    ? isLeftAt(between, mention)
                    : toward && asked.getValue().contains("front");
            Optional<String> side = Places.sideOf(heard.words(), fault.part(), mention);
            if (side.filter(asked.getValue()::contains).isPresent() && (position ? leftIn : toward)) {
                int to = mention.to() + (heard.word(mention.to()).equals("side") ? 1 : 0);
                return new Told(List.of(fault.with(asked.getKey(), side.get())), false, to);
            }
            if (ofSide && side.isEmpty() && isGearAlone(mention)) {
                refused.add(fault.part());
                refusedGear = Optional.of(mention);
            }
        }
        return Told.NOTHING;
    }

    private static boolean isGearAlone(Mention mention) {
        return mention.gear().isPresent()
                || mention.one(Meaning.NoSuchGear.class).isPresent();
    }

    /** {@code stuck in 2nd}, {@code left in 2nd}: the place follows the failure at once. */
    private boolean isLeftAt(List<String> between, Mention mention) {
        boolean in = between.contains("in") || between.contains("at");
        String before = heard.word(mention.from() - 2);
        return in && (before.equals("stuck") || before.equals("left") || before.equals("jammed"));
    }

    private Told place(Fault fault, String key, Mention mention, List<String> between) {
        Places places = new Places(heard.words(), fault.part());
        Optional<Mention> second =
                heard.word(mention.to()).equals("and") ? heard.startingAt(mention.to() + 1) : Optional.empty();
        List<String> found = new ArrayList<>();
        int to = mention.to();
        if (between.contains("between") && second.isPresent()) {
            found.addAll(places.between(mention, second.get()));
            to = second.get().to();
        } else if (between.contains("behind") || between.contains("after") || between.contains("past")) {
            places.behind(mention).ifPresent(found::add);
        } else if (between.contains("front") || between.contains("before") || between.contains("ahead")) {
            places.inFrontOf(mention).ifPresent(found::add);
        }
        List<Fault> faults = found.stream().map(item -> fault.with(key, item)).toList();
        return faults.isEmpty() ? Told.NOTHING : new Told(faults, true, to);
    }

    private void use(int from, int to) {
        IntStream.range(from, to).forEach(used::add);
    }
}
