package org.layshaft.engine.symptom;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.fault.Parting;
import org.layshaft.engine.fault.Planes;
import org.layshaft.engine.fault.Served;
import org.layshaft.engine.fault.Sides;
import org.layshaft.engine.train.Changes;
import org.layshaft.kb.failure.Effect;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Side;

/** Gathers what one fault changes. */
final class EffectsOf {
    private final Layout layout;
    private final Part part;
    private final List<Served> served;
    private final Set<String> stripped = new HashSet<>();
    private final Set<String> loose = new HashSet<>();
    private final Set<String> seized = new HashSet<>();
    private final Map<String, String> cuts = new HashMap<>();
    private final Set<String> parted = new HashSet<>();
    private final Set<String> fast = new HashSet<>();
    private final Map<String, Optional<Side>> stuck = new HashMap<>();
    private final Map<String, Optional<Side>> left = new HashMap<>();
    private final Set<Effects.Place> unreached = new HashSet<>();
    private final Set<String> gonePieces = new HashSet<>();
    private final Set<String> lostRails = new HashSet<>();
    private final Set<Effects.Place> ringless = new HashSet<>();
    private boolean drags;
    private boolean slips;
    private boolean noDrive;

    private EffectsOf(Layout layout, Part part) {
        this.layout = layout;
        this.part = part;
        this.served = Served.by(layout, part);
    }

    /** @param fault with everything told */
    static Effects fault(Layout layout, Fault fault, FailureMode mode) {
        EffectsOf effects = new EffectsOf(layout, layout.the(Part.class, fault.part()));
        mode.effects().stream()
                .filter(effect -> effect.appliesTo(fault.told()))
                .forEach(effect -> effects.add(
                        effect,
                        effect.argument().map(given -> given.in(fault.told())).orElse("")));
        return effects.gathered();
    }

    private void add(Effect effect, String argument) {
        switch (effect.kind()) {
            case MESHES_CARRY_NOTHING ->
                stripped.add(part instanceof Fitting chain ? chain.of().orElseThrow() : part.id());
            case TURNS_FREE_ON_ITS_SHAFT -> loose.add(part.id());
            case SEIZED_TO_ITS_SHAFT -> seized.add(part.id());
            case LETS_NOTHING_ROLL -> fast.add(part.id());
            case CUT_BEHIND -> cuts.put(part.id(), argument);
            case TIES_ITS_SIDES -> fast.add(((Fitting) part).of().orElseThrow());
            case PARTED, LETS_NO_DRIVE_THROUGH -> part();
            case CANNOT_REACH -> places(Sides.of(argument).orElseThrow()).forEach(unreached::add);
            case CANNOT_FIND_RAIL -> lostRails.add(Planes.at(layout, argument));
            case STUCK_AT -> served.forEach(each -> stuck.put(each.member(), Sides.of(argument)));
            case LEFT_AT -> served.forEach(each -> left.put(each.member(), Sides.of(argument)));
            case SPEEDS_NOT_MATCHED ->
                served.forEach(each ->
                        each.side().ifPresent(side -> ringless.add(new Effects.Place(each.member(), side))));
            case RAILS_NOT_KEPT_APART ->
                gonePieces.addAll(part instanceof Interlock interlock ? interlock.pieces() : List.of(part.id()));
            case CLUTCH_DOES_NOT_RELEASE -> drags = true;
            // What engages only part of its depth, or is not held, turns and moves as before.
            case STANDS_OFF_CENTRE, REACHES_PART_WAY, LETS_GO_UNDER_LOAD, RAIL_NOT_HELD -> {}
        }
    }

    private void part() {
        if (Parting.isInTheEquations(layout, part)) {
            parted.add(Parting.of(layout, part));
        } else {
            noDrive = true;
            slips = part instanceof Clutch;
        }
    }

    private Stream<Effects.Place> places(Side side) {
        return served.stream().filter(each -> each.at(side)).map(each -> new Effects.Place(each.member(), side));
    }

    private Effects gathered() {
        return new Effects(
                new Changes(stripped, loose, seized, cuts, parted, fast),
                stuck,
                left,
                unreached,
                gonePieces,
                lostRails,
                ringless,
                drags,
                slips,
                noDrive);
    }
}
