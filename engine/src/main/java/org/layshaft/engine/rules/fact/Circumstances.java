package org.layshaft.engine.rules.fact;

import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Situation;

/**
 * How things turn and are loaded in one situation, by the equations. Told of the parts that faults are about, and only
 * where a fault asks. {@code at} names the gear, or is {@code neutral}.
 */
public final class Circumstances {
    private Circumstances() {}

    /** What turns with a part turns: itself, or the sleeve of a fork, the wheel of a half-shaft. */
    public record Turns(Situation situation, String at, String part, String body) implements Fact {
        @Override
        public String says(Names names) {
            return "%s turns %s".formatted(names.the(body), names.situation(situation, at));
        }
    }

    /** The two that a part lies between, or that it is one of, turn unlike. */
    public record TurnUnlike(Situation situation, String at, String part, String one, String other) implements Fact {
        @Override
        public String says(Names names) {
            return "%s and %s turn unlike %s"
                    .formatted(names.the(one), names.the(other), names.situation(situation, at));
        }
    }

    /** A part lies under a free gear: a needle bearing, a thrust washer. */
    public record LiesUnder(String part, String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "%s turns on %s".formatted(names.the(gear), names.the(part));
        }
    }

    /** In this gear the drive goes through teeth, if only through these. */
    public record ThroughTeeth(String at, String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "in %s the drive goes through the teeth of %s".formatted(names.gear(at), names.the(gear));
        }
    }

    /** What turns with a part, or in it, is under load. */
    public record CarriesThen(Situation situation, String at, String part, String body) implements Fact {
        @Override
        public String says(Names names) {
            return "%s is under load %s".formatted(names.the(body), names.situation(situation, at));
        }
    }

    /** Teeth of a gear are loaded on the flank that the engine loads when it pulls forward. */
    public record DriveFlankCarries(Situation situation, String at, String part, String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "%s is loaded on the drive flanks of its teeth %s"
                    .formatted(names.the(gear), names.situation(situation, at));
        }
    }

    /** Teeth of a gear are loaded on the other flank. */
    public record CoastFlankCarries(Situation situation, String at, String part, String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "%s is loaded on the coast flanks of its teeth %s"
                    .formatted(names.the(gear), names.situation(situation, at));
        }
    }

    /** The two sides of a differential turn unlike. */
    public record SidesDiffer(Situation situation, String at, String part, String differential) implements Fact {
        @Override
        public String says(Names names) {
            return "the two sides of %s turn unlike %s"
                    .formatted(names.the(differential), names.situation(situation, at));
        }
    }

    /** Wheels would have to turn unlike, and nothing lets them. */
    public record WheelsTied(Situation situation, String at) implements Fact {
        @Override
        public String says(Names names) {
            return "wheels that would have to turn unlike are tied %s".formatted(names.situation(situation, at));
        }
    }

    /** The speed of the vehicle is read from this body. */
    public record SpeedReadFrom(String body) implements Fact {
        @Override
        public String says(Names names) {
            return "the speed is read from %s".formatted(names.the(body));
        }
    }
}
