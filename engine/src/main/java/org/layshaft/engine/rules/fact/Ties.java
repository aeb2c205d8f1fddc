package org.layshaft.engine.rules.fact;

import java.util.List;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Side;

/** What ties bodies together. {@code connection} is the id of the equation it stands for. */
public final class Ties {
    private Ties() {}

    /** Two gears that are always in mesh. */
    public record InMesh(String connection, String oneGear, String otherGear, int oneTeeth, int otherTeeth)
            implements Fact {
        @Override
        public String says(Names names) {
            return meshWords(names, oneGear, otherGear, oneTeeth, otherTeeth);
        }
    }

    /** Two gears that mesh while a sliding gear, or the rim of a sleeve, stands to a side. */
    public record MeshedBySliding(
            String connection, String member, Side side, String oneGear, String otherGear, int oneTeeth, int otherTeeth)
            implements Fact {
        @Override
        public String says(Names names) {
            return "to the %s, %s brings %s (%d teeth) and %s (%d) into mesh"
                    .formatted(
                            side.word(),
                            names.the(member),
                            names.the(oneGear),
                            oneTeeth,
                            names.the(otherGear),
                            otherTeeth);
        }
    }

    /** A gear or sleeve that turns with what carries it. */
    public record FixedOn(String connection, String body, String carrier) implements Fact {
        @Override
        public String says(Names names) {
            return "%s turns with %s".formatted(names.the(body), names.the(carrier));
        }
    }

    /** A free gear that has seized to its shaft. */
    public record SeizedOn(String connection, String gear, String shaft, Faulty.Present fault) implements Fact {
        @Override
        public String says(Names names) {
            return "%s no longer turns on %s but with it".formatted(names.the(gear), names.the(shaft));
        }

        @Override
        public List<Fact> restsOn() {
            return List.of(fault);
        }
    }

    /** A free gear that has seized to a spindle that stands in the case. */
    public record HeldOn(String connection, String gear, String spindle, Faulty.Present fault) implements Fact {
        @Override
        public String says(Names names) {
            return "%s can only stand, as %s does".formatted(names.the(gear), names.the(spindle));
        }

        @Override
        public List<Fact> restsOn() {
            return List.of(fault);
        }
    }

    /** A sleeve that can be slid over the clutching teeth of a gear. */
    public record CouplesTo(String connection, String sleeve, Side side, String gear) implements Fact {
        @Override
        public String says(Names names) {
            return "to the %s, %s slides over the clutching teeth of %s"
                    .formatted(side.word(), names.the(sleeve), names.the(gear));
        }
    }

    /** A half-shaft joins its side gear to its wheel. */
    public record HalfShaftJoins(String connection, String halfShaft, String wheel) implements Fact {
        @Override
        public String says(Names names) {
            return "%s turns %s".formatted(names.the(halfShaft), names.the(wheel));
        }
    }

    /** A differential shares its turning between two half-shafts. */
    public record Splits(String connection, String differential, String left, String right) implements Fact {
        @Override
        public String says(Names names) {
            return "%s shares its turning between %s and %s"
                    .formatted(names.the(differential), names.the(left), names.the(right));
        }
    }

    /** While {@code driver} turns once, {@code tied} turns {@code ratio} times; wherever the sleeves stand. */
    public record Tie(String connection, String driver, String tied, Fraction ratio) implements Fact {
        @Override
        public String says(Names names) {
            return tieWords(names, driver, tied, ratio);
        }
    }

    /** The same, with this selected. */
    public record TieAt(String at, String connection, String driver, String tied, Fraction ratio) implements Fact {
        @Override
        public String says(Names names) {
            return tieWords(names, driver, tied, ratio);
        }
    }

    private static String meshWords(Names names, String one, String other, int oneTeeth, int otherTeeth) {
        return "%s (%d teeth) meshes with %s (%d)".formatted(names.the(one), oneTeeth, names.the(other), otherTeeth);
    }

    private static String tieWords(Names names, String driver, String tied, Fraction ratio) {
        return ratio.equals(Fraction.ONE)
                ? "%s and %s turn as one".formatted(names.the(driver), names.the(tied))
                : "%s turns %s times for each turn of %s, the %s way"
                        .formatted(
                                names.the(tied),
                                ratio.absolute(),
                                names.the(driver),
                                ratio.signum() < 0 ? "other" : "same");
    }
}
