package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;
import org.layshaft.web.desk.ByHand;
import org.layshaft.web.desk.HandDesk;
import org.layshaft.web.desk.Places;

/**
 * What can be moved by hand, and what came of it.
 *
 * @param rows what can be moved, each with its places
 * @param set whether anything was set by hand
 * @param says what it does and why
 * @param allowed whether the levers let it
 * @param ofLevers why they do or do not
 * @param backHref to the gear or question, with nothing moved
 */
record HandView(
        List<RowView> rows, boolean set, List<String> says, boolean allowed, List<String> ofLevers, String backHref) {

    /** A sleeve, sliding gear or inner clutch. */
    record RowView(String name, List<PlaceView> places) {}

    /**
     * One place of it.
     *
     * @param does what input and output would do there, where they would be held; empty otherwise
     */
    record PlaceView(String side, String engages, String href, boolean current, String does) {
        public boolean hasDoes() {
            return !does.isEmpty();
        }
    }

    static HandView of(Scene scene, HandDesk desk) {
        Places places = new Places(scene.layout(), scene.names());
        List<RowView> rows = scene.layout().members().stream()
                .map(member -> row(member, scene, desk, places))
                .toList();
        Optional<ByHand> byHand = scene.byHand();
        return new HandView(
                rows,
                byHand.isPresent(),
                byHand.map(ByHand::says).orElse(List.of()),
                byHand.map(ByHand::leversAllow).orElse(true),
                byHand.map(ByHand::ofLevers).orElse(List.of()),
                scene.address()
                                .drawn(scene.address().sight().withNothingMoved())
                                .link() + "#sheet");
    }

    private static RowView row(ShiftMember member, Scene scene, HandDesk desk, Places places) {
        List<PlaceView> views = new ArrayList<>();
        for (Optional<Side> side : List.of(Optional.of(Side.FRONT), Optional.<Side>empty(), Optional.of(Side.REAR))) {
            if (side.isEmpty() || member.at(side.get()).isPresent()) {
                views.add(place(member, side, scene, desk, places));
            }
        }
        return new RowView(scene.called(member.part()), views);
    }

    private static PlaceView place(ShiftMember member, Optional<Side> side, Scene scene, HandDesk desk, Places places) {
        Stance moved = HandDesk.moved(scene.layout(), scene.stance(), member.part(), side);
        boolean current = scene.stance().of(member.part()).equals(side);
        Motion.Outcome outcome = current ? Motion.Outcome.NEUTRAL : desk.outcome(scene.layout(), scene.faults(), moved);
        String does = switch (outcome) {
            case LOCKED -> "locks";
            case INPUT_HELD -> "holds the input";
            case OUTPUT_HELD -> "holds the output";
            case DRIVES, NEUTRAL -> "";
        };
        return new PlaceView(
                side.map(Side::word).orElse(""),
                scene.dialect().say(places.engaged(member.part(), side)),
                scene.address().moved(HandDesk.written(moved)).link() + "#sheet",
                current,
                does);
    }

    public boolean hasRows() {
        return !rows.isEmpty();
    }

    public boolean hasOfLevers() {
        return !ofLevers.isEmpty();
    }
}
