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
import org.layshaft.engine.fault.Sides;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Faulty;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Train;
import org.layshaft.kb.failure.Effect;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
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
    private final List<KnownFault> faults;
    private final List<Fact> facts = new ArrayList<>();
    private final Map<String, Faulty.Present> seizing = new HashMap<>();
    private final Set<String> strippedGears = new HashSet<>();
    private final Set<String> looseSeats = new HashSet<>();
    private final Set<String> seizedGears = new HashSet<>();
    private final Map<String, String> cuts = new HashMap<>();
    private final Set<String> parted = new HashSet<>();
    private final Set<String> fastBearings = new HashSet<>();

    private FaultFacts(Layout layout, List<KnownFault> faults) {
        this.layout = layout;
        this.faults = List.copyOf(faults);
        faults.forEach(this::add);
    }

    static FaultFacts none(Layout layout) {
        return new FaultFacts(layout, List.of());
    }

    static FaultFacts of(Layout layout, List<KnownFault> faults) {
        return new FaultFacts(layout, faults);
    }

    List<KnownFault> faults() {
        return faults;
    }

    Changes changes() {
        return new Changes(strippedGears, looseSeats, seizedGears, cuts, parted, fastBearings);
    }

    List<Fact> facts() {
        return List.copyOf(facts);
    }

    /** The fault by which this gear is seized, bearing turned fast, or differential tied; empty where there is none. */
    Optional<Faulty.Present> seizing(String part) {
        return Optional.ofNullable(seizing.get(part));
    }

    /** What a fault is to the rules. */
    static Faulty.Present present(KnownFault known) {
        return new Faulty.Present(known.fault().part(), known.fault().mode(), known.words());
    }

    private void add(KnownFault known) {
        Fault fault = known.fault();
        Part part = layout.the(Part.class, fault.part());
        Faulty.Present here = present(known);
        facts.add(here);
        known.mode().effects().stream()
                .filter(effect -> effect.appliesTo(fault.told()))
                .forEach(effect -> apply(effect, argument(effect, fault), part, here));
    }

    private static String argument(Effect effect, Fault fault) {
        return effect.argument().map(given -> given.in(fault.told())).orElse("");
    }

    private void apply(Effect effect, String argument, Part part, Faulty.Present here) {
        switch (effect.kind()) {
            case MESHES_CARRY_NOTHING ->
                strip(part instanceof Fitting chain ? layout.gear(chain.of().orElseThrow()) : part, here);
            case TURNS_FREE_ON_ITS_SHAFT -> loosen(part, here);
            case SEIZED_TO_ITS_SHAFT -> seize(part, here);
            case CUT_BEHIND -> cut((Shaft) part, argument, here);
            case LETS_NOTHING_ROLL -> turnFast((Bearing) part, here);
            case TIES_ITS_SIDES -> tieSides((Fitting) part, here);
            case PARTED, LETS_NO_DRIVE_THROUGH -> part(part, here);
            case CANNOT_FIND_RAIL -> facts.add(new Faulty.RailNotFound(Planes.at(layout, argument), here));
            case CANNOT_REACH ->
                Served.by(layout, part).stream()
                        .filter(served -> served.at(sideOf(argument)))
                        .forEach(served -> facts.add(new Faulty.CannotReach(served.member(), sideOf(argument), here)));
            case STUCK_AT -> served(part, served -> new Faulty.StuckAt(served.member(), placeOf(argument), here));
            case LEFT_AT -> served(part, served -> new Faulty.LeftAt(served.member(), placeOf(argument), here));
            case SPEEDS_NOT_MATCHED ->
                served(
                        part,
                        served -> new Faulty.SpeedsNotMatched(
                                served.member(), served.side().orElseThrow(), here));
            case RAILS_NOT_KEPT_APART -> pieces(part).forEach(piece -> facts.add(new Faulty.PieceGone(piece, here)));
            case REACHES_PART_WAY ->
                served(part, served -> new Faulty.ReachesPartWay(served.member(), sideOf(argument), here));
            case STANDS_OFF_CENTRE ->
                served(part, served -> new Faulty.StandsOffCentre(served.member(), sideOf(argument), here));
            // These change nothing that the rules move or turn; the notices of the mode say all there is to them.
            case LETS_GO_UNDER_LOAD, RAIL_NOT_HELD, CLUTCH_DOES_NOT_RELEASE -> {}
        }
    }

    private void strip(Part gear, Faulty.Present here) {
        strippedGears.add(gear.id());
        layout.everyMesh()
                .filter(mesh -> mesh.joins(gear.id()))
                .forEach(mesh -> facts.add(new Faulty.Parted(meshId(mesh), gear.id(), mesh.other(gear.id()), here)));
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
        boolean inTheCase =
                layout.find(Shaft.class, carrier).filter(Shaft::held).isPresent();
        facts.add(new Faulty.Parted((inTheCase ? "held " : "seat ") + seat.id(), seat.id(), carrier, here));
    }

    private void seize(Part gear, Faulty.Present here) {
        seizedGears.add(gear.id());
        seizing.put(gear.id(), here);
    }

    /** A bearing under a free gear seizes that. */
    private void turnFast(Bearing bearing, Faulty.Present here) {
        fastBearings.add(bearing.id());
        boolean underGear = layout.find(Gear.class, bearing.outer()).isPresent();
        seizing.putIfAbsent(underGear ? bearing.outer() : bearing.id(), here);
    }

    private void tieSides(Fitting inside, Faulty.Present here) {
        String differential = inside.of().orElseThrow();
        fastBearings.add(differential);
        seizing.putIfAbsent(differential, here);
    }

    private void cut(Shaft shaft, String place, Faulty.Present here) {
        cuts.put(shaft.id(), place);
        facts.add(new Faulty.Cut(shaft.id(), shaft.along().indexOf(place) + 1, here));
    }

    private void part(Part part, Faulty.Present here) {
        if (!Parting.isInTheEquations(layout, part)) {
            facts.add(new Faulty.NoDriveThrough(part.id(), here));
            return;
        }
        String gone = Parting.of(layout, part);
        parted.add(gone);
        facts.add(layout.find(HalfShaft.class, gone)
                .map(shaft -> new Faulty.Parted("half-shaft " + gone, gone, shaft.wheel(), here))
                .or(() -> layout.find(Joint.class, gone)
                        .map(joint -> new Faulty.Parted("joint " + gone, joint.from(), joint.to(), here)))
                .or(() -> layout.find(Clutch.class, gone)
                        .map(clutch -> new Faulty.Parted(
                                "clutch " + gone, clutch.drivenBy().orElseThrow(), clutch.drives(), here)))
                .or(() -> layout.find(Differential.class, gone)
                        .map(differential -> new Faulty.Parted(
                                "differential " + gone,
                                gone,
                                differential.sides().get(0),
                                here)))
                .orElseGet(() -> new Faulty.Parted("road " + gone, gone, Train.ROAD, here)));
    }

    private interface Serving {
        Fact of(Served served);
    }

    private void served(Part part, Serving serving) {
        Served.by(layout, part).forEach(served -> facts.add(serving.of(served)));
    }

    private static Stream<String> pieces(Part part) {
        return part instanceof Interlock interlock ? interlock.pieces().stream() : Stream.of(part.id());
    }

    private static Side sideOf(String word) {
        return Sides.of(word).orElseThrow();
    }

    private static Side placeOf(String word) {
        return Sides.of(word).orElse(null);
    }
}
