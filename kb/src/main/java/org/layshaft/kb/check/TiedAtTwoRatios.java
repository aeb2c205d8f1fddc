package org.layshaft.kb.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.EffectiveSides;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;
import org.layshaft.kb.typed.TypedShaft;
import org.layshaft.kb.typed.TypedSide;

/** Places of a lever that tie two shafts to each other by two pairs of gears of unlike ratio, so that neither can turn. */
final class TiedAtTwoRatios implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedSelector selector : layout.selectors()) {
            selector.drum().forEach(place -> check(place.pointer(), ties(place.pushes(), selector, layout), report));
            if (selector.drum().isEmpty()) {
                for (TypedRail rail : selector.rails()) {
                    for (Side side : Side.values()) {
                        check(rail.pointer(), ties(rail, side, layout), report);
                    }
                }
            }
        }
    }

    /** A free gear tied to its shaft, and the gear fixed on another shaft that it is in mesh with. */
    private record Tie(TypedGear gear, String shaft, TypedGear mate, String other) {
        boolean contradicts(Tie tie) {
            return shaft.equals(tie.shaft) && other.equals(tie.other) && !isOneRatio(tie);
        }

        private boolean isOneRatio(Tie tie) {
            return (long) teeth(gear) * teeth(tie.mate) == (long) teeth(tie.gear) * teeth(mate);
        }

        private static int teeth(TypedGear gear) {
            return gear.teeth().orElse(0);
        }
    }

    private static void check(String pointer, List<Tie> ties, Report report) {
        for (int one = 0; one < ties.size(); one++) {
            for (Tie other : ties.subList(one + 1, ties.size())) {
                if (ties.get(one).contradicts(other)) {
                    report.broken(
                            pointer,
                            "One place of the lever ties '%s' to '%s' at two ratios at once: the box would lock."
                                    .formatted(other.shaft(), other.other()),
                            "'%s' and '%s'"
                                    .formatted(
                                            ties.get(one).gear().id(),
                                            other.gear().id()),
                            "Leave one of the two to another place.");
                }
            }
        }
    }

    private static List<Tie> ties(Map<Reference, Side> pushes, TypedSelector selector, TypedLayout layout) {
        List<Tie> ties = new ArrayList<>();
        pushes.forEach((base, side) -> selector.rails().stream()
                .filter(rail -> rail.base().equals(base.id()))
                .forEach(rail -> ties.addAll(ties(rail, side, layout))));
        return ties;
    }

    private static List<Tie> ties(TypedRail rail, Side side, TypedLayout layout) {
        List<String> moved = rail.moves().stream().map(Reference::id).toList();
        return layout.members().stream()
                .filter(member -> moved.contains(member.base()))
                .flatMap(member ->
                        Stream.ofNullable(EffectiveSides.of(member, layout).get(side)))
                .filter(TypedSide.Couples.class::isInstance)
                .flatMap(couples ->
                        layout.gear(((TypedSide.Couples) couples).to().id()).stream())
                .filter(gear -> gear.seat() == Seat.FREE)
                .flatMap(gear -> ties(gear, layout))
                .toList();
    }

    private static Stream<Tie> ties(TypedGear gear, TypedLayout layout) {
        return layout.meshesAlwaysMade().stream()
                .filter(mesh -> mesh.joins(gear.id()))
                .flatMap(mesh -> layout
                        .gear(mesh.first().equals(gear.id()) ? mesh.second() : mesh.first())
                        .filter(mate -> mate.seat() == Seat.FIXED)
                        .flatMap(mate -> layout.shaftOf(gear.id())
                                .flatMap(shaft -> layout.shaftOf(mate.id())
                                        .filter(other -> stay(shaft, other))
                                        .map(other -> new Tie(gear, shaft.id(), mate, other.id()))))
                        .stream());
    }

    /** Planets are another matter. */
    private static boolean stay(TypedShaft one, TypedShaft other) {
        return one.carriedBy().isEmpty() && other.carriedBy().isEmpty();
    }
}
