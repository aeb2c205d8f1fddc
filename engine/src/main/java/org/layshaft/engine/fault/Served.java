package org.layshaft.engine.fault;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Detent;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockPiece;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/**
 * What a part has to do with engaging gears.
 *
 * @param member id of the sleeve or sliding gear it serves
 * @param side the one side it serves; empty for both
 */
public record Served(String member, Optional<Side> side) {

    /** Whether it serves this side. */
    public boolean at(Side which) {
        return side.isEmpty() || side.get() == which;
    }

    /** Everything that a part serves; nothing for a part that has no hand in engaging gears. */
    public static List<Served> by(Layout layout, Part part) {
        if (part instanceof Fork fork) {
            return both(fork.member());
        }
        if (part instanceof Sleeve sleeve) {
            return both(sleeve.id());
        }
        if (part instanceof Hub hub) {
            return both(hub.sleeve());
        }
        if (part instanceof Rail rail) {
            return onRail(layout, rail);
        }
        if (part instanceof Detent detent) {
            return onRail(layout, layout.the(Rail.class, detent.rail()));
        }
        if (part instanceof Interlock interlock) {
            return onRails(layout, interlock.rails());
        }
        if (part instanceof InterlockPiece piece) {
            return onRails(layout, piece.rails());
        }
        if (part instanceof BlockingRing ring) {
            return oneSide(layout.member(ring.sleeve()), ring.gear());
        }
        if (part instanceof ClutchingTeeth teeth) {
            return oneSide(layout.member(teeth.sleeve()), teeth.gear());
        }
        if (part instanceof Fitting fitting) {
            return by(layout, fitting);
        }
        if (part instanceof Bearing bearing) {
            return layout.find(Gear.class, bearing.outer()).isPresent()
                    ? coupling(layout, bearing.outer())
                    : onShaft(layout, bearing.inner());
        }
        if (part instanceof Gear gear && gear.seat() == Seat.FREE) {
            return coupling(layout, gear.id());
        }
        if (part instanceof DogRing || part instanceof Differential) {
            return coupling(layout, part.id());
        }
        if (part instanceof Shaft) {
            return onShaft(layout, part.id());
        }
        return itself(layout, part.id());
    }

    private static List<Served> by(Layout layout, Fitting fitting) {
        String of = fitting.of().orElse("");
        return switch (fitting.kind()) {
            case KEYS -> both(of);
            case THRUST_WASHER -> coupling(layout, of);
            case LOCK_OUT ->
                onRail(layout, layout.the(Rail.class, of)).stream()
                        .map(served -> new Served(served.member(), fitting.side()))
                        .toList();
            case SHIFT_DRUM,
                    SELECTOR_FINGER,
                    GEAR_LEVER,
                    LEVER_BUSH,
                    LEVER_BOOT,
                    LINKAGE,
                    SHIFT_CABLE,
                    GATE_CABLE,
                    ACTUATOR -> ofLever(layout, of);
            case MOUNTINGS, CLUTCH_HOUSING, FLYWHEEL_BEARING ->
                layout.members().stream()
                        .flatMap(member -> both(member.part()).stream())
                        .toList();
            default -> List.of();
        };
    }

    /** Everything that one lever moves. */
    private static List<Served> ofLever(Layout layout, String lever) {
        return layout.levers().stream()
                .filter(each -> each.id().equals(lever))
                .flatMap(each -> each.places().stream())
                .flatMap(place -> place.pushes().keySet().stream())
                .distinct()
                .flatMap(rail -> layout.find(Rail.class, rail).stream())
                .flatMap(rail -> onRail(layout, rail).stream())
                .toList();
    }

    /** Whatever slides over the clutching teeth of this. */
    private static List<Served> coupling(Layout layout, String to) {
        List<Served> coupling = layout.members().stream()
                .flatMap(member -> oneSide(member, to).stream())
                .toList();
        return coupling.isEmpty() ? itself(layout, to) : coupling;
    }

    /** The sleeves and sliding gears of a shaft. */
    private static List<Served> onShaft(Layout layout, String shaft) {
        return layout.members().stream()
                .map(ShiftMember::part)
                .filter(member -> layout.shaft(shaft).along().contains(member))
                .flatMap(member -> both(member).stream())
                .toList();
    }

    private static List<Served> itself(Layout layout, String part) {
        return layout.members().stream()
                .filter(member -> member.part().equals(part))
                .map(member -> new Served(member.part(), Optional.empty()))
                .toList();
    }

    private static List<Served> both(String member) {
        return List.of(new Served(member, Optional.empty()));
    }

    private static List<Served> onRail(Layout layout, Rail rail) {
        return rail.forks().stream()
                .map(fork -> layout.the(Fork.class, fork).member())
                .flatMap(member -> both(member).stream())
                .toList();
    }

    private static List<Served> onRails(Layout layout, List<String> rails) {
        return rails.stream()
                .flatMap(rail -> onRail(layout, layout.the(Rail.class, rail)).stream())
                .toList();
    }

    private static List<Served> oneSide(ShiftMember member, String gear) {
        return Stream.of(Side.values())
                .filter(side -> member.at(side)
                        .filter(engagement -> engagement instanceof Engagement.Couples couples
                                && couples.to().equals(gear))
                        .isPresent())
                .map(side -> new Served(member.part(), Optional.of(side)))
                .toList();
    }
}
