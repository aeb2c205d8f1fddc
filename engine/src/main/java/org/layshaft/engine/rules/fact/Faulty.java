package org.layshaft.engine.rules.fact;

import java.util.List;
import org.layshaft.engine.words.Names;
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

    /** A gear whose meshes no longer carry still has another in mesh with it, wherever the sleeves stand. */
    public record RunsAgainst(String gear, String other, Present fault) implements Change {
        @Override
        public String says(Names names) {
            return "%s still runs against %s".formatted(names.the(gear), names.the(other));
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

    /**
     * A fault is noticed when something is so.
     *
     * @param situation one of those in which it is noticed
     * @param may whether it only may be noticed
     * @param body the body of the faulty part, empty where it is none
     * @param shaft the shaft that the part sits on, empty where it is none
     * @param member the sleeve or sliding gear that the part serves, empty where it serves none
     * @param side the side that it serves, null for both
     * @param through the changes by which the fault comes to be noticed; empty where the fault itself is noticed
     */
    public record Shows(
            String notice,
            NoticeWhen occasion,
            Situation situation,
            boolean may,
            String body,
            String shaft,
            String member,
            Side side,
            List<Change> through,
            Present fault)
            implements Change {
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
