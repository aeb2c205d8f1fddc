package org.layshaft.engine.rules.fact;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Side;

/** What faults change. Each rests on the fault. */
public final class Faulty {
    private Faulty() {}

    /** A change that a fault makes. */
    public sealed interface Change extends Fact {
        Present fault();

        @Override
        default List<Fact> restsOn() {
            return List.of(fault());
        }
    }

    /**
     * A fault is present.
     *
     * @param words the fault, in words: {@code the 3-4 fork is bent toward the front}
     */
    public record Present(String part, String mode, String words) implements Fact {
        @Override
        public String says(Names names) {
            return words;
        }
    }

    /** A sleeve or sliding gear, and its rail with it, cannot be moved; in neutral where the side is null. */
    public record StuckAt(String member, Side side, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s cannot be moved from where it stands %s".formatted(names.the(member), names.place(side));
        }
    }

    /** A sleeve or sliding gear no longer follows its rail; left in neutral where the side is null. */
    public record LeftAt(String member, Side side, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s does not follow its rail and stays %s".formatted(names.the(member), names.place(side));
        }
    }

    /** A sleeve or sliding gear does not engage on this side. */
    public record CannotReach(String member, Side side, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s does not reach far enough to the %s to engage".formatted(names.the(member), side.word());
        }
    }

    /** A sleeve or sliding gear engages on this side, but not to its full depth. */
    public record ReachesPartWay(String member, Side side, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s engages to the %s only part of its depth".formatted(names.the(member), side.word());
        }
    }

    /** A sleeve or sliding gear stands off its middle in every place of its rail. */
    public record StandsOffCentre(String member, Side side, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s is held too far to the %s in every place of its rail".formatted(names.the(member), side.word());
        }
    }

    /** The lever does not find this rail. */
    public record RailNotFound(String rail, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "the lever does not find %s".formatted(names.the(rail));
        }
    }

    /** Nothing is driven through this part, whatever is selected. */
    public record NoDriveThrough(String part, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "no drive gets through %s".formatted(names.the(part));
        }
    }

    /** A piece of the interlock no longer does its work. */
    public record PieceGone(String piece, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s no longer keeps rails apart".formatted(names.the(piece));
        }
    }

    /**
     * A connection is gone.
     *
     * @param one one of the bodies or parts that it joined
     * @param other the other
     */
    public record Parted(String connection, String one, String other, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s and %s no longer turn each other".formatted(names.the(one), names.the(other));
        }
    }

    /** A faulty gear has another in mesh with it wherever the sleeves stand, whether or not that mesh still carries. */
    public record RunsAgainst(String gear, String other, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s runs against %s".formatted(names.the(gear), names.the(other));
        }
    }

    /**
     * A shaft is in two pieces.
     *
     * @param place how many of the items along it are in front of the break
     */
    public record Cut(String shaft, int place, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s is in two pieces".formatted(names.the(shaft));
        }
    }

    /** The blocking ring on this side no longer brings the speeds together before the sleeve passes. */
    public record SpeedsNotMatched(String member, Side side, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "to the %s, %s passes before the speeds are alike".formatted(side.word(), names.the(member));
        }
    }

    /**
     * A fault is noticed when something is so.
     *
     * @param situation one of those in which it is noticed
     * @param heat whether only with all cold, or only with all hot; empty for either
     * @param may whether it only may be noticed
     * @param member the sleeve or sliding gear that the part serves, empty where it serves none
     * @param side the side that it serves, null for both
     * @param through the changes by which the fault comes to be noticed; empty where the fault itself is noticed
     */
    public record Shows(
            String notice,
            NoticeWhen occasion,
            Situation situation,
            Optional<Heat> heat,
            boolean may,
            String member,
            Side side,
            List<Change> through,
            Present fault)
            implements Change {
        /** What is then noticed with this gear selected, or in neutral. */
        public Verdicts.Noticed noticedAt(String at) {
            return new Verdicts.Noticed(at, notice, situation, heat, may, fault);
        }

        @Override
        public String says(Names names) {
            return "that is noticed as '%s'".formatted(names.notice(notice));
        }

        @Override
        public List<Fact> restsOn() {
            return through.isEmpty() ? List.of(fault) : List.copyOf(through);
        }
    }
}
