package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.fault.KnownFault;
import org.layshaft.engine.fault.Parting;
import org.layshaft.engine.fault.Planes;
import org.layshaft.engine.fault.Served;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Faulty;
import org.layshaft.engine.rules.fact.Verdicts;
import org.layshaft.engine.train.Changes;
import org.layshaft.kb.failure.Effect;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.failure.NoticeLine;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.layout.Sleeve;

/** What faults, with everything told, change in the equations and in the facts that the rules read. */
final class FaultFacts {
    private final Layout layout;
    private final Box box;
    private final List<Fact> facts = new ArrayList<>();
    private final Map<String, Faulty.Present> present = new HashMap<>();
    private final Set<String> strippedGears = new HashSet<>();
    private final Set<String> looseSeats = new HashSet<>();
    private final Set<String> seizedGears = new HashSet<>();
    private final Map<String, String> cuts = new HashMap<>();
    private final Set<String> parted = new HashSet<>();
    private final Set<String> fastBearings = new HashSet<>();

    /** Finds the gears, by name, that a member engages on a side. */
    interface Box {
        Stream<String> gearsAt(String member, Side side);
    }

    private FaultFacts(Layout layout, Box box) {
        this.layout = layout;
        this.box = box;
    }

    static FaultFacts none(Layout layout) {
        return new FaultFacts(layout, (member, side) -> Stream.of());
    }

    static FaultFacts of(Layout layout, Box box, List<KnownFault> faults) {
        FaultFacts facts = new FaultFacts(layout, box);
        faults.forEach(facts::add);
        return facts;
    }

    Changes changes() {
        return new Changes(strippedGears, looseSeats, seizedGears, cuts, parted, fastBearings);
    }

    List<Fact> facts() {
        return List.copyOf(facts);
    }

    /** The fault of this part. */
    Faulty.Present presentAt(String part) {
        return present.get(part);
    }

    private void add(KnownFault known) {
        Fault fault = known.fault();
        Part part = layout.the(Part.class, fault.part());
        Faulty.Present here = new Faulty.Present(fault.part(), fault.mode(), known.words());
        facts.add(here);
        present.put(part.id(), here);
        FailureMode mode = known.mode();
        mode.effects().stream()
                .filter(effect -> effect.appliesTo(fault.told()))
                .forEach(effect -> apply(effect, argument(effect, fault), part, here));
        mode.noticed().stream()
                .filter(line -> line.appliesTo(fault.told()))
                .forEach(line -> show(line, fault, part, here));
    }

    private static String argument(Effect effect, Fault fault) {
        return effect.argument().map(given -> given.in(fault.told())).orElse("");
    }

    private void apply(Effect effect, String argument, Part part, Faulty.Present here) {
        switch (effect.kind()) {
            case MESHES_CARRY_NOTHING ->
                strip(part instanceof Fitting chain ? layout.gear(chain.of().orElseThrow()) : part, here);
            case TURNS_FREE_ON_ITS_SHAFT -> loosen(part, here);
            case SEIZED_TO_ITS_SHAFT -> seizedGears.add(part.id());
            case CUT_BEHIND -> cut((Shaft) part, argument, here);
            case LETS_NOTHING_ROLL -> fastBearings.add(part.id());
            case TIES_ITS_SIDES -> fastBearings.add(((Fitting) part).of().orElseThrow());
            case PARTED -> part(part, here);
            case LETS_NO_DRIVE_THROUGH -> facts.add(new Faulty.NoDriveThrough(part.id(), here));
            case CANNOT_FIND_RAIL -> facts.add(new Faulty.RailNotFound(Planes.at(layout, argument), here));
            case CANNOT_REACH ->
                served(part)
                        .forEach(member -> facts.add(
                                new Faulty.CannotReach(member, side(argument).orElseThrow(), here)));
            case STUCK_AT ->
                served(part)
                        .forEach(member -> facts.add(
                                new Faulty.StuckAt(member, side(argument).orElse(null), here)));
            case LEFT_AT ->
                served(part)
                        .forEach(member -> facts.add(
                                new Faulty.LeftAt(member, side(argument).orElse(null), here)));
            case SPEEDS_NOT_MATCHED -> unmatch((BlockingRing) part);
            case RAILS_NOT_KEPT_APART -> pieces(part).forEach(piece -> facts.add(new Faulty.PieceGone(piece, here)));
            case REACHES_PART_WAY ->
                served(part)
                        .forEach(member -> facts.add(
                                new Faulty.ReachesPartWay(member, side(argument).orElseThrow(), here)));
            case STANDS_OFF_CENTRE ->
                served(part)
                        .forEach(member -> facts.add(new Faulty.StandsOffCentre(
                                member, side(argument).orElseThrow(), here)));
            // These change nothing that turns or moves; the notices of the mode say all there is to them.
            case LETS_GO_UNDER_LOAD, RAIL_NOT_HELD, CLUTCH_DOES_NOT_RELEASE -> {}
        }
    }

    private void strip(Part gear, Faulty.Present here) {
        strippedGears.add(gear.id());
        layout.everyMesh()
                .filter(mesh -> mesh.joins(gear.id()))
                .forEach(mesh -> facts.add(new Faulty.Parted(meshId(mesh), gear.id(), mesh.other(gear.id()), here)));
        layout.meshes().stream()
                .filter(mesh -> mesh.joins(gear.id()))
                .forEach(mesh -> facts.add(new Faulty.RunsAgainst(gear.id(), mesh.other(gear.id()), here)));
    }

    private static String meshId(Mesh mesh) {
        return "mesh " + mesh.id();
    }

    private void loosen(Part seat, Faulty.Present here) {
        looseSeats.add(seat.id());
        String carrier = seat instanceof Gear gear
                ? gear.carrier()
                : layout.all(Sleeve.class)
                        .filter(sleeve -> sleeve.hub().equals(seat.id()))
                        .findFirst()
                        .orElseThrow()
                        .shaft();
        facts.add(new Faulty.Parted("seat " + seat.id(), seat.id(), carrier, here));
    }

    private void cut(Shaft shaft, String place, Faulty.Present here) {
        cuts.put(shaft.id(), place);
        facts.add(new Faulty.Cut(shaft.id(), shaft.along().indexOf(place) + 1, here));
    }

    private void part(Part part, Faulty.Present here) {
        String gone = Parting.of(layout, part);
        Optional<HalfShaft> halfShaft = layout.find(HalfShaft.class, gone);
        Optional<Joint> joint = layout.find(Joint.class, gone);
        if (halfShaft.isPresent()) {
            parted.add(gone);
            facts.add(new Faulty.Parted(
                    "half-shaft " + gone, gone, halfShaft.get().wheel(), here));
        } else if (joint.isPresent()) {
            parted.add(gone);
            facts.add(new Faulty.Parted(
                    "joint " + gone, joint.get().from(), joint.get().to(), here));
        } else if (layout.outputs().size() > 1) {
            parted.add(gone);
            facts.add(new Faulty.Parted("road " + gone, gone, part.id(), here));
        } else {
            facts.add(new Faulty.NoDriveThrough(part.id(), here));
        }
    }

    private void unmatch(BlockingRing ring) {
        Served.by(layout, ring).stream()
                .flatMap(served -> box.gearsAt(served.member(), served.side().orElseThrow()))
                .forEach(gear -> facts.add(new Verdicts.WithoutRing(gear)));
    }

    private Stream<String> served(Part part) {
        return Served.by(layout, part).stream().map(Served::member);
    }

    private static Stream<String> pieces(Part part) {
        return part instanceof Interlock interlock ? interlock.pieces().stream() : Stream.of(part.id());
    }

    private void show(NoticeLine line, Fault fault, Part part, Faulty.Present here) {
        Optional<Side> onlySide =
                line.side().map(given -> given.in(fault.told())).flatMap(FaultFacts::side);
        List<Served> served = Served.by(layout, part);
        String shaft = part instanceof Gear gear ? gear.carrier() : "";
        for (Situation situation : line.in()) {
            if (served.isEmpty()) {
                facts.add(new Faulty.Shows(
                        line.notice(),
                        line.when(),
                        situation,
                        line.may(),
                        part.id(),
                        shaft,
                        "",
                        null,
                        List.of(),
                        here));
            }
            for (Served serves : served) {
                Side side = onlySide.or(serves::side).orElse(null);
                facts.add(new Faulty.Shows(
                        line.notice(),
                        line.when(),
                        situation,
                        line.may(),
                        part.id(),
                        shaft,
                        serves.member(),
                        side,
                        through(serves.member(), side, here),
                        here));
            }
        }
    }

    /** The changes that this fault makes to how a member engages on a side. */
    private List<Faulty.Change> through(String member, Side side, Faulty.Present here) {
        return facts.stream()
                .filter(Faulty.Change.class::isInstance)
                .map(Faulty.Change.class::cast)
                .filter(change -> change.fault().equals(here))
                .filter(change -> change instanceof Faulty.ReachesPartWay part
                                && part.member().equals(member)
                                && part.side() == side
                        || change instanceof Faulty.StandsOffCentre off
                                && off.member().equals(member)
                                && off.side() == side)
                .toList();
    }

    /** A side by its word; empty for neutral. */
    private static Optional<Side> side(String word) {
        return Stream.of(Side.values()).filter(side -> side.word().equals(word)).findFirst();
    }
}
