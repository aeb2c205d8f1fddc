package org.layshaft.engine.rules.fact;

import java.util.List;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Side;

/**
 * The shift mechanism. {@code at} names what is selected: a gear, neutral, or two gears at once.
 */
public final class Mechanism {
    private Mechanism() {}

    /** Something that can be selected. */
    public record Target(String at) implements Fact {
        @Override
        public String says(Names names) {
            return names.withSelected(at);
        }
    }

    /** The lever pushes this rail to this side. */
    public record Selecting(String at, String rail, Side side) implements Fact {
        @Override
        public String says(Names names) {
            return "the lever pushes %s to the %s for %s".formatted(names.the(rail), side.word(), names.gear(at));
        }
    }

    /** For this, the clutch is closed. */
    public record Closing(String at, String clutch) implements Fact {
        @Override
        public String says(Names names) {
            return "%s is closed for %s".formatted(names.the(clutch), names.gear(at));
        }
    }

    /** A fork on a rail moves a sleeve or sliding gear that engages something on this side. */
    public record ForkMoves(String rail, String fork, String member, Side side) implements Fact {
        @Override
        public String says(Names names) {
            return "%s sits on %s and moves %s".formatted(names.the(fork), names.the(rail), names.the(member));
        }
    }

    /** All that lies between two rails to keep them apart. */
    public record Between(String oneRail, String otherRail, List<String> pieces) implements Fact {
        @Override
        public String says(Names names) {
            return "%s %s between %s and %s"
                    .formatted(
                            names.list(pieces),
                            pieces.size() == 1 ? "lies" : "lie",
                            names.the(oneRail),
                            names.the(otherRail));
        }
    }

    /** Two gears that different rails select. */
    public record Pair(String at, String oneGear, String otherGear, String oneRail, String otherRail) implements Fact {
        @Override
        public String says(Names names) {
            return "%s is selected by %s, %s by %s"
                    .formatted(names.gear(oneGear), names.the(oneRail), names.gear(otherGear), names.the(otherRail));
        }
    }

    /** Of these two rails only one can be out of neutral. */
    public record KeptApart(String oneRail, String otherRail) implements Fact {
        @Override
        public String says(Names names) {
            return "while %s is out of neutral, %s is held, and the other way about"
                    .formatted(names.the(oneRail), names.the(otherRail));
        }
    }

    /** A fault has taken away something that keeps these two rails apart. */
    public record LetGo(String oneRail, String otherRail, Faulty.Present fault) implements Fact {
        @Override
        public String says(Names names) {
            return "%s can be moved while %s is out of neutral, and the other way about"
                    .formatted(names.the(otherRail), names.the(oneRail));
        }
    }

    /** Nothing keeps the rails of these two gears apart. */
    public record CanMeet(String at) implements Fact {
        @Override
        public String says(Names names) {
            return "nothing keeps %s from being engaged at once".formatted(names.gear(at));
        }
    }

    /** With one gear selected another is engaged as well, though its rail is not pushed. */
    public record StaysEngaged(String gear, String selected) implements Fact {
        @Override
        public String says(Names names) {
            return "%s stays engaged %s".formatted(names.gear(gear), names.withSelected(selected));
        }

        /** Whether these are the two gears, either way round. */
        public boolean joins(String one, String other) {
            return gear.equals(one) && selected.equals(other) || gear.equals(other) && selected.equals(one);
        }
    }

    /** A rail cannot leave this place: a side, or neutral where the side is null. */
    public record RailHeld(String rail, Side side, Faulty.Present fault) implements Fact {
        @Override
        public String says(Names names) {
            return side == null
                    ? "%s cannot leave neutral".formatted(names.the(rail))
                    : "%s cannot leave its %s place".formatted(names.the(rail), side.word());
        }
    }

    /** A rail cannot be moved where it is wanted. */
    public record RailShut(String at, String rail, Faulty.Present fault) implements Fact {
        @Override
        public String says(Names names) {
            return "%s cannot be moved to select %s".formatted(names.the(rail), names.gear(at));
        }
    }

    /** A sleeve or sliding gear stands to a side. */
    public record Stands(String at, String member, Side side) implements Fact {
        @Override
        public String says(Names names) {
            return "%s stands to the %s".formatted(names.the(member), side.word());
        }
    }
}
