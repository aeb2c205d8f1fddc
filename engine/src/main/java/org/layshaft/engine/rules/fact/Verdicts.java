package org.layshaft.engine.rules.fact;

import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Side;

/** What a sound gear needs, and what becomes of it. */
public final class Verdicts {
    private Verdicts() {}

    /**
     * A gear of the sound box.
     *
     * @param rail id of the rail that is pushed for it first; empty, as the member, where nothing has to be engaged
     * @param speed turns of the output for one of the input, with its sign
     */
    public record SoundGear(String gear, String rail, String member, Side side, Fraction speed) implements Fact {
        @Override
        public String says(Names names) {
            if (member.isEmpty()) {
                return "%s needs nothing to be engaged".formatted(names.gear(gear));
            }
            return "%s is engaged by moving %s to the %s".formatted(names.gear(gear), names.the(member), side.word());
        }
    }

    /**
     * What one lever does for a gear of the sound box. A gear that several levers select takes several of these.
     *
     * @param rail id of the rail, or of the clutch that is closed
     * @param member id of what it moves
     */
    public record Takes(String gear, String rail, String member, Side side) implements Fact {
        @Override
        public String says(Names names) {
            return "%s takes %s moved to the %s".formatted(names.gear(gear), names.the(member), side.word());
        }
    }

    /** When all is sound there is no drive with every lever in neutral; an axle, say, has no neutral. */
    public record HasNeutral() implements Fact {
        @Override
        public String says(Names names) {
            return "in neutral nothing should drive";
        }
    }

    /** A blocking ring is there to bring the speeds together for this gear. */
    public record WithRing(String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "%s has a blocking ring".formatted(names.gear(gear));
        }
    }

    /** Nothing brings the speeds together for this gear. */
    public record WithoutRing(String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "no blocking ring brings the speeds together for %s".formatted(names.gear(gear));
        }
    }

    /** A gear takes its drive through this connection. */
    public record Needs(String gear, String connection) implements Fact {
        @Override
        public String says(Names names) {
            return "%s takes its drive that way".formatted(names.gear(gear));
        }
    }

    /**
     * A gear takes its drive through a stretch of a shaft.
     *
     * @param first the place, counted along the shaft, behind which the stretch begins
     * @param last the place in front of which it ends
     */
    public record NeedsStretch(String gear, String shaft, int first, int last) implements Fact {
        @Override
        public String says(Names names) {
            return "%s takes its drive through that stretch of %s".formatted(names.gear(gear), names.the(shaft));
        }
    }

    /** A gear drives at its ratio. */
    public record Works(String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "%s drives at its ratio".formatted(names.gear(gear));
        }
    }

    /** With this selected the box cannot turn. */
    public record Locks(String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "the box locks %s".formatted(names.withSelected(gear));
        }
    }

    /** The output turns, but not at the ratio of the gear selected. */
    public record DrivesOtherwise(String gear, Fraction speed) implements Fact {
        @Override
        public String says(Names names) {
            return "%s the output still turns, %s".formatted(names.withSelected(gear), names.turns(speed));
        }
    }

    /**
     * A gear does not drive.
     *
     * @param cause what tells this loss from another of the same gear: the fault in words
     */
    public record Lost(String gear, String cause) implements Fact {
        @Override
        public String says(Names names) {
            return "%s is lost".formatted(names.gear(gear));
        }
    }

    /** The output does not follow the input. */
    public record NotDriven(String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "nothing drives the output %s".formatted(names.withSelected(gear));
        }
    }

    /**
     * Something is noticed.
     *
     * @param heat whether only with all cold, or only with all hot; empty for either
     * @param may whether it only may be noticed
     */
    public record Noticed(
            String at, String notice, Situation situation, Optional<Heat> heat, boolean may, Faulty.Present fault)
            implements Fact {
        @Override
        public String says(Names names) {
            return may
                    ? names.perhapsNoticed(notice, situation.word(), heat, at)
                    : names.noticed(notice, situation.word(), heat, at);
        }
    }
}
