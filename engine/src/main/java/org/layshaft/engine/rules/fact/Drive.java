package org.layshaft.engine.rules.fact;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;

/** What drives what. {@code at} names what is selected; speeds are turns for one turn of the source. */
public final class Drive {
    private Drive() {}

    /** Where the drive comes from: the clutch at the input, or the road at the output. */
    public enum Source {
        INPUT,
        ROAD
    }

    /** The body that the clutch drives. */
    public record InputBody(String body) implements Fact {
        @Override
        public String says(Names names) {
            return "the clutch drives %s".formatted(names.the(body));
        }
    }

    /** A body that the load is on. */
    public record OutputBody(String body) implements Fact {
        @Override
        public String says(Names names) {
            return "the drive leaves by %s".formatted(names.the(body));
        }
    }

    /**
     * A body is driven.
     *
     * @param driver the body that drives it; itself, at the source
     * @param connection what ties the two; empty at the source
     */
    public record Driven(String at, Source source, String body, Fraction speed, String driver, String connection)
            implements Fact {
        @Override
        public String says(Names names) {
            if (connection.isEmpty()) {
                return source == Source.INPUT
                        ? "%s is driven".formatted(names.the(body))
                        : "the road turns %s".formatted(names.the(body));
            }
            return "%s drives %s: %s".formatted(names.the(driver), names.the(body), names.turns(speed));
        }
    }

    /** A body that can only stand, since it is tied to the case. */
    public record Standing(String at, String body) implements Fact {
        @Override
        public String says(Names names) {
            return "%s stands".formatted(names.the(body));
        }
    }

    /** Whatever a body does, another that is tied to it turns so many times for each of its turns. */
    public record Follows(String at, String leader, String body, Fraction turns) implements Fact {
        @Override
        public String says(Names names) {
            return turns.equals(Fraction.ONE)
                    ? "%s and %s turn as one".formatted(names.the(body), names.the(leader))
                    : "%s turns %s times for each turn of %s".formatted(names.the(body), turns, names.the(leader));
        }
    }

    /** Straight ahead, a body turns so many times for each turn of a wheel. */
    public record Rolls(String at, String body, Fraction turns) implements Fact {
        @Override
        public String says(Names names) {
            return turns.equals(Fraction.ONE)
                    ? "straight ahead, %s turns as the wheels do".formatted(names.the(body))
                    : "straight ahead, %s turns %s times for each turn of the wheels".formatted(names.the(body), turns);
        }
    }

    /** A body would have to turn at two speeds at once, so that it can only stand. */
    public record Contradiction(String at, Source source, String body, Fraction oneSpeed, Fraction otherSpeed)
            implements Fact {
        @Override
        public String says(Names names) {
            return "%s would have to turn both %s and %s times for each turn of the %s, so nothing can turn"
                    .formatted(names.the(body), oneSpeed, otherSpeed, source == Source.INPUT ? "input" : "output");
        }
    }

    /** A body that carries the power on its way from input to output. */
    public record Carries(String at, String body) implements Fact {
        @Override
        public String says(Names names) {
            return "%s carries the power".formatted(names.the(body));
        }
    }

    /** A differential turns without driving either wheel. */
    public record SpinsInVain(String at, String differential, String halfShaft, Faulty.Present fault) implements Fact {
        @Override
        public String says(Names names) {
            return "%s turns, but its side gear at %s spins without load, and a differential never gives one wheel more torque than the other: neither wheel is driven"
                    .formatted(names.the(differential), names.the(halfShaft));
        }
    }
}
