package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Box.Push;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;
import org.layshaft.web.desk.PairGroup;
import org.layshaft.web.desk.Wording;
import org.layshaft.web.page.GlanceView.RailView;

/** How the gears of a box are selected, in words. */
final class Mechanism {
    /** More pairs than these are counted and not listed. */
    private static final int MOST_PAIRS = 12;

    private final Box box;
    private final Layout layout;
    private final Names names;

    Mechanism(Box box, Names names) {
        this.box = box;
        this.layout = box.layout();
        this.names = names;
    }

    List<String> says() {
        List<String> says = new ArrayList<>();
        List<String> planes = layout.gate().planes();
        if (planes.size() > 1) {
            says.add("Across its gate the lever passes %s, in this order.".formatted(names.list(planes)));
        }
        layout.levers().stream()
                .filter(lever -> !lever.id().equals(Lever.GEAR))
                .map(this::lever)
                .forEach(says::add);
        layout.all(Interlock.class).map(this::interlock).forEach(says::add);
        layout.all(Fitting.class)
                .filter(fitting -> fitting.kind() == PartKind.LOCK_OUT)
                .flatMap(fitting -> lockOut(fitting).stream())
                .forEach(says::add);
        if (says.isEmpty()) {
            says.add(
                    layout.members().isEmpty()
                            ? "Nothing is selected: it always drives."
                            : "One thing is moved, and nothing else.");
        }
        return says;
    }

    private String lever(Lever lever) {
        List<String> places = Stream.concat(
                        lever.neutral() ? Stream.of(lever.neutralCalled().orElse("neutral")) : Stream.empty(),
                        lever.places().stream().flatMap(place -> place.called().stream()))
                .toList();
        return places.isEmpty()
                ? "%s selects besides.".formatted(capital(names.the(lever.name())))
                : "%s has the places %s.".formatted(capital("the " + lever.name()), Names.joined(places));
    }

    private String interlock(Interlock interlock) {
        String rails = names.list(interlock.rails());
        return switch (interlock.form()) {
            case PINS ->
                "Plungers between neighbours, and a pin through a rail that has one on either side, keep %s from moving together."
                        .formatted(rails);
            case PLATE ->
                "A plate that the finger carries along shuts each of %s but the one it stands at.".formatted(rails);
            case COLLAR -> "A collar around the selector shaft lets only one of %s move.".formatted(rails);
            case DRUM -> "The drum moves %s one place after another, by its grooves.".formatted(rails);
            case NONE -> "Nothing keeps %s from moving together.".formatted(rails);
        };
    }

    private Optional<String> lockOut(Fitting fitting) {
        return fitting.of()
                .map(rail -> "%s keeps %s from going to the %s until it is meant."
                        .formatted(
                                capital(names.the(fitting.id())),
                                names.the(rail),
                                fitting.side().map(Side::word).orElse("end")));
    }

    List<RailView> rails() {
        return layout.all(Rail.class)
                .map(rail -> new RailView(
                        rail.name(),
                        Address.of(layout.id()).at(rail.id()).link(),
                        gears(rail, Side.FRONT),
                        gears(rail, Side.REAR)))
                .toList();
    }

    private String gears(Rail rail, Side side) {
        List<String> gears = box.gears().stream()
                .filter(gear -> gear.pushes().stream().anyMatch(push -> pushes(push, rail, side)))
                .map(gear -> Names.gearName(gear.name()))
                .toList();
        return gears.isEmpty() ? "–" : Names.joined(gears);
    }

    private static boolean pushes(Push push, Rail rail, Side side) {
        return push.rail().equals(rail.id()) && push.side() == side;
    }

    /** What becomes of pairs of gears on different rails. */
    List<String> pairs(List<Conflict> conflicts) {
        return Stream.concat(
                        PairGroup.of(conflicts, true).stream()
                                .map(group ->
                                        "%s can meet: %s.".formatted(pairs(group), Wording.ofBoth(group.outcome()))),
                        PairGroup.of(conflicts, false).stream()
                                .map(group -> "%s: kept apart by %s; without it %s."
                                        .formatted(
                                                pairs(group),
                                                names.list(group.preventedBy()),
                                                Wording.ofBoth(group.outcome()))))
                .toList();
    }

    private static String pairs(PairGroup group) {
        int count = group.conflicts().size();
        return count > MOST_PAIRS ? "%d pairs of gears".formatted(count) : group.pairs();
    }

    private static String capital(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
