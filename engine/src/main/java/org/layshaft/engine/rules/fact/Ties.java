package org.layshaft.engine.rules.fact;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Side;

/** What ties bodies together. {@code connection} is the id of the equation it stands for. */
public final class Ties {
    private Ties() {}

    /** Two gears that are always in mesh. */
    public record InMesh(
            String connection, String oneGear, String otherGear, int oneTeeth, int otherTeeth, MeshKind kind)
            implements Fact {
        @Override
        public String says(Names names) {
            return kind == MeshKind.CHAIN
                    ? "a chain joins %s (%d teeth) and %s (%d)"
                            .formatted(names.the(oneGear), oneTeeth, names.the(otherGear), otherTeeth)
                    : meshWords(names, oneGear, otherGear, oneTeeth, otherTeeth);
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

    /** A shaft that a bearing no longer lets roll in the case. */
    public record HeldFast(String connection, String body, String bearing, Faulty.Present fault) implements Fact {
        @Override
        public String says(Names names) {
            return "%s holds %s fast in the case".formatted(names.the(bearing), names.the(body));
        }

        @Override
        public List<Fact> restsOn() {
            return List.of(fault);
        }
    }

    /** Two shafts that a bearing between them no longer lets roll. */
    public record StuckTogether(String connection, String one, String other, String bearing, Faulty.Present fault)
            implements Fact {
        @Override
        public String says(Names names) {
            return "%s no longer rolls between %s and %s"
                    .formatted(names.the(bearing), names.the(one), names.the(other));
        }

        @Override
        public List<Fact> restsOn() {
            return List.of(fault);
        }
    }

    /** A differential whose two sides no longer turn unlike. */
    public record SidesTied(String connection, String differential, String one, String other, Faulty.Present fault)
            implements Fact {
        @Override
        public String says(Names names) {
            return "%s no longer lets %s and %s turn unlike"
                    .formatted(names.the(differential), names.the(one), names.the(other));
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

    /** A clutch inside the box that, closed, turns a shaft with the one that drives it. */
    public record ClutchJoins(String connection, String clutch, String driving, String driven) implements Fact {
        @Override
        public String says(Names names) {
            return "closed, %s turns %s with %s".formatted(names.the(clutch), names.the(driven), names.the(driving));
        }
    }

    /** A ring of clutching teeth that stands in the case. */
    public record InTheCase(String connection, String body) implements Fact {
        @Override
        public String says(Names names) {
            return "%s is fixed in the case".formatted(names.the(body));
        }
    }

    /** Straight ahead, this wheel or output shaft turns as the others do. */
    public record OnOneRoad(String connection, String wheel) implements Fact {
        @Override
        public String says(Names names) {
            return "%s rolls on one road with the others".formatted(names.the(wheel));
        }
    }

    /**
     * Two gears that planets on one carrier tie.
     *
     * @param set id of the set; stands for all its meshes
     * @param proportion turns of the ring relative to the carrier for one turn of the sun relative to it
     */
    public record EpicyclicSet(String set, String sun, String ring, String carrier, Fraction proportion)
            implements Fact {
        @Override
        public String says(Names names) {
            return "planets carried by %s tie %s to %s: relative to the carrier, %s turns %s times for each turn of %s, the %s way"
                    .formatted(
                            names.the(carrier),
                            names.the(sun),
                            names.the(ring),
                            names.the(ring),
                            proportion.absolute(),
                            names.the(sun),
                            proportion.signum() < 0 ? "other" : "same");
        }
    }

    /** A planet turns {@code byMate} times for each turn of its mate, and {@code byCarrier} for each of its carrier. */
    public record PlanetTurns(
            String connection, String mate, String carrier, String planet, Fraction byMate, Fraction byCarrier)
            implements Fact {
        @Override
        public String says(Names names) {
            return "%s, carried round by %s, meshes with %s"
                    .formatted(names.the(planet), names.the(carrier), names.the(mate));
        }
    }

    /** Turns of the third: {@code byOne} for each turn of the one, and {@code byOther} for each of the other. */
    public record ThirdOf(String connection, String one, Fraction byOne, String other, Fraction byOther, String third)
            implements Fact {

        /** A differential, either side or its case as the third. */
        public static List<ThirdOf> ofMean(String connection, String left, String right, String differential) {
            return ofSet(connection, left, right, differential, Fraction.of(-1));
        }

        /** An epicyclic set, any of its members as the third; the carrier only where sun and ring can differ. */
        public static List<ThirdOf> ofSet(String set, String sun, String ring, String carrier, Fraction proportion) {
            Fraction rest = Fraction.ONE.minus(proportion);
            List<ThirdOf> thirds = new ArrayList<>();
            addBoth(thirds, new ThirdOf(set, sun, proportion, carrier, rest, ring));
            addBoth(
                    thirds,
                    new ThirdOf(
                            set,
                            ring,
                            proportion.inverse(),
                            carrier,
                            rest.over(proportion).negated(),
                            sun));
            if (!rest.isZero()) {
                addBoth(
                        thirds,
                        new ThirdOf(
                                set,
                                ring,
                                rest.inverse(),
                                sun,
                                proportion.over(rest).negated(),
                                carrier));
            }
            return thirds;
        }

        private static void addBoth(List<ThirdOf> thirds, ThirdOf one) {
            thirds.add(one);
            thirds.add(new ThirdOf(one.connection, one.other, one.byOther, one.one, one.byOne, one.third));
        }

        @Override
        public String says(Names names) {
            return "%s and %s settle how %s turns".formatted(names.the(one), names.the(other), names.the(third));
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
