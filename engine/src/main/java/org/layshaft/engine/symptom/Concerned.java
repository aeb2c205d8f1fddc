package org.layshaft.engine.symptom;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Shaft;

/**
 * What turns, where one asks how a part turns.
 *
 * @param bodies ids of what turns with the part; any of them will do
 * @param pairs what it lies between
 * @param gears ids of the gears whose teeth it is about
 * @param differentials ids of the differentials whose sides it is about
 */
public record Concerned(List<String> bodies, List<Between> pairs, List<String> gears, List<String> differentials) {
    /** Stands for the engine among bodies; what stands in the case is {@link Bearing#CASE}. */
    public static final String ENGINE = "the engine";

    /** What turns with the engine, and touches the release bearing only with the pedal down. */
    public static final String CLUTCH_FINGERS = "the clutch fingers";

    private static final Concerned NOTHING = new Concerned(List.of(), List.of(), List.of(), List.of());

    public Concerned {
        bodies = List.copyOf(bodies);
        pairs = List.copyOf(pairs);
        gears = List.copyOf(gears);
        differentials = List.copyOf(differentials);
    }

    /** Two bodies that something lies between. */
    public record Between(String inner, String outer) {}

    /** The first free gear that it lies under or beside; empty for what lies under none. */
    public Optional<String> gearOn(Layout layout) {
        return pairs.stream()
                .map(Between::outer)
                .filter(outer -> layout.find(Gear.class, outer).isPresent())
                .findFirst();
    }

    public static Concerned of(Layout layout, Part part) {
        if (part instanceof Gear gear) {
            return new Concerned(
                    List.of(gear.id()), List.of(new Between(gear.carrier(), gear.id())), List.of(gear.id()), List.of());
        }
        if (part instanceof Bearing bearing) {
            return layout.find(Gear.class, bearing.outer()).isPresent()
                    ? under(bearing.inner(), bearing.outer())
                    : between(bearing.inner(), bearing.outer());
        }
        if (part instanceof Hub hub) {
            return turning(hub.sleeve());
        }
        if (part instanceof BlockingRing ring) {
            return between(ring.sleeve(), ring.gear());
        }
        if (part instanceof ClutchingTeeth teeth) {
            return turning(teeth.gear());
        }
        if (part instanceof Clutch clutch) {
            return turning(clutch.drives());
        }
        if (part instanceof HalfShaft halfShaft) {
            return turning(halfShaft.wheel());
        }
        if (part instanceof Joint joint) {
            return turning(joint.to());
        }
        if (part instanceof Differential differential) {
            return new Concerned(
                    List.of(part.id()),
                    List.of(),
                    differential.ringGear().stream().toList(),
                    List.of(part.id()));
        }
        if (part instanceof Fork fork) {
            return turning(fork.member());
        }
        return part instanceof Fitting fitting ? of(layout, fitting) : turning(part.id());
    }

    private static Concerned of(Layout layout, Fitting fitting) {
        String of = fitting.of().orElse("");
        return switch (fitting.kind()) {
            case KEYS, CHAIN, JOINT -> turning(of);
            case THRUST_WASHER -> under(layout.gear(of).carrier(), of);
            case FLYWHEEL_BEARING -> between(of, ENGINE);
            case RELEASE_BEARING -> between(Bearing.CASE, CLUTCH_FINGERS);
            case ENGINE, CLUTCH_HOUSING, MOUNTINGS -> turning(ENGINE);
            case FINAL_DRIVE -> new Concerned(List.of(of), List.of(), List.of(of), List.of());
            case SIDE_GEARS, DIFFERENTIAL_PINIONS, CROSS_SHAFT, LIMITED_SLIP ->
                new Concerned(List.of(of), List.of(), List.of(), List.of(of));
            case CARRIER_BEARINGS -> between(of, Bearing.CASE);
            case INNER_JOINT, OUTER_JOINT -> turning(wheel(layout, of));
            case WHEEL_BEARING -> between(wheel(layout, of), Bearing.CASE);
            case TYRES ->
                new Concerned(
                        layout.all(HalfShaft.class).map(HalfShaft::wheel).toList(), List.of(), List.of(), List.of());
            case SPEED_READING -> new Concerned(SpeedRead.from(layout), List.of(), List.of(), List.of());
            case OIL, BOX_CASE ->
                new Concerned(
                        Stream.of(layout.all(Shaft.class), layout.all(Gear.class))
                                .flatMap(parts -> parts)
                                .map(Part::id)
                                .toList(),
                        List.of(),
                        layout.all(Gear.class).map(Gear::id).toList(),
                        List.of());
            default -> NOTHING;
        };
    }

    private static String wheel(Layout layout, String halfShaft) {
        return layout.the(HalfShaft.class, halfShaft).wheel();
    }

    private static Concerned turning(String body) {
        return new Concerned(List.of(body), List.of(), List.of(), List.of());
    }

    /** Under a free gear, or beside it: it bears the gear, and what the shaft carries is nothing to it. */
    private static Concerned under(String shaft, String gear) {
        return new Concerned(List.of(gear), List.of(new Between(shaft, gear)), List.of(), List.of());
    }

    private static Concerned between(String inner, String outer) {
        List<String> bodies = Stream.of(inner, outer)
                .filter(body -> !body.equals(Bearing.CASE))
                .toList();
        return new Concerned(bodies, List.of(new Between(inner, outer)), List.of(), List.of());
    }
}
