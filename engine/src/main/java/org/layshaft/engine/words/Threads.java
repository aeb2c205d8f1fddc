package org.layshaft.engine.words;

import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.api.Reason;

/**
 * Finds the threads from faults to a conclusion. A change that a fault makes is a reason without a rule that rests on
 * something, and what it rests on in the end is the fault.
 */
final class Threads {
    /** What drives what, and what is tied to what: too long to tell link by link. */
    private static final Set<String> LINKS = Set.of("drive", "ties", "sets", "road", "path", "sleeves");

    private static final String CONTRADICTION = "would have to turn";
    private static final String SHOWS = "that is noticed as";
    private static final Set<String> NOT_DRIVEN = Set.of("verdict/not-driven", "verdict/no-drive-through");
    private static final Set<String> GO_WITHOUT_SAYING = Set.of("with ", "the drive leaves by ");

    private Threads() {}

    /** The faults, in words, that a reason rests on. */
    static Stream<String> faults(Reason reason) {
        return isChange(reason)
                ? reason.from().stream()
                        .flatMap(below -> below.from().isEmpty() ? Stream.of(below.says()) : faults(below))
                : reason.from().stream().flatMap(Threads::faults);
    }

    /** Whether it only says that something is not known, over the ways in which it may be. */
    static boolean isChoice(Reason reason) {
        return !reason.from().isEmpty()
                && reason.from().stream().allMatch(way -> way.says().startsWith("if "));
    }

    /** Whether it is something that is noticed: when, and after a colon what. */
    static boolean isNoticed(Reason reason) {
        return reason.rule().startsWith("notice/") || reason.rule().startsWith("motion/");
    }

    /** Whether this is a step on the way from a fault, to be told in a sentence of its own. */
    static boolean isStep(Reason reason) {
        return !reason.rule().isEmpty()
                && !isLink(reason)
                && faults(reason).findAny().isPresent();
    }

    /** What a conclusion rests on beside other steps: the changes that faults make, then what is so anyhow. */
    static Stream<String> premises(Reason reason) {
        Stream<String> changes = reason.from().stream().flatMap(Threads::changes);
        Stream<String> otherwise = reason.from().stream()
                .filter(premise -> isGround(reason, premise))
                .map(Reason::says);
        return Stream.concat(changes, otherwise);
    }

    private static Stream<String> changes(Reason premise) {
        if (isChange(premise)) {
            return premise.says().startsWith(SHOWS)
                    ? premise.from().stream().flatMap(Threads::changes)
                    : Stream.of(premise.says());
        }
        return isLink(premise) ? premise.from().stream().flatMap(Threads::changes) : Stream.of();
    }

    /** What no fault has part in; how a gear is engaged that is not driven, and what is selected, go without saying. */
    private static boolean isGround(Reason conclusion, Reason premise) {
        return !isChange(premise)
                && !isLink(premise)
                && GO_WITHOUT_SAYING.stream().noneMatch(premise.says()::startsWith)
                && !NOT_DRIVEN.contains(premise.rule())
                && !NOT_DRIVEN.contains(conclusion.rule())
                && !conclusion.says().contains(CONTRADICTION)
                && faults(premise).findAny().isEmpty();
    }

    private static boolean isChange(Reason reason) {
        return reason.rule().isEmpty() && !reason.from().isEmpty();
    }

    private static boolean isLink(Reason reason) {
        int slash = reason.rule().indexOf('/');
        return slash > 0
                && LINKS.contains(reason.rule().substring(0, slash))
                && !reason.says().contains(CONTRADICTION);
    }
}
