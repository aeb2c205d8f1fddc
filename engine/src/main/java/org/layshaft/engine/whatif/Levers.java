package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Stance;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;

/** Every way in which the levers of a layout can stand together. */
final class Levers {
    private Levers() {}

    /**
     * How all levers stand.
     *
     * @param places by lever, in the order of the layout, which of its places it has; empty for neutral
     */
    record Setting(Layout layout, List<Optional<Lever.Place>> places) {

        List<Box.Push> pushes() {
            return places.stream()
                    .flatMap(Optional::stream)
                    .flatMap(place -> place.pushes().entrySet().stream())
                    .flatMap(push -> pushed(layout, push.getKey(), push.getValue()))
                    .toList();
        }

        Stance stance() {
            Map<String, Side> engaged = new TreeMap<>();
            pushes().forEach(push -> engaged.put(push.member(), push.side()));
            return new Stance(engaged);
        }

        /** What the places are called, where they are: {@code high two-wheel}. */
        String called() {
            List<String> words = new ArrayList<>();
            for (int lever = 0; lever < places.size(); lever++) {
                calledAt(lever).ifPresent(words::add);
            }
            return String.join(" ", words);
        }

        /** Whether some lever stands at a place that is not called anything, so that gears must be told apart by number. */
        boolean isNumbered() {
            for (int lever = 0; lever < places.size(); lever++) {
                if (places.get(lever).isPresent() && calledAt(lever).isEmpty()) {
                    return true;
                }
            }
            return false;
        }

        /** The settings with one of the levers put to neutral that could as well stand there. */
        Stream<Setting> withLess() {
            List<Setting> less = new ArrayList<>();
            for (int lever = 0; lever < places.size(); lever++) {
                boolean spare = places.get(lever).isPresent()
                        && calledAt(lever).isEmpty()
                        && layout.levers().get(lever).neutral();
                if (spare) {
                    List<Optional<Lever.Place>> others = new ArrayList<>(places);
                    others.set(lever, Optional.empty());
                    less.add(new Setting(layout, others));
                }
            }
            return less.stream();
        }

        private Optional<String> calledAt(int lever) {
            Optional<String> neutral = layout.levers().get(lever).neutralCalled();
            return places.get(lever).isPresent() ? places.get(lever).get().called() : neutral;
        }
    }

    static List<Setting> all(Layout layout) {
        List<List<Optional<Lever.Place>>> ways = List.of(List.of());
        for (Lever lever : layout.levers()) {
            ways = ways.stream()
                    .flatMap(way -> choices(lever).map(choice -> with(way, choice)))
                    .toList();
        }
        return ways.stream().map(way -> new Setting(layout, way)).toList();
    }

    /** Every lever in neutral; one that has none at its first place. */
    static Selection neutral(Layout layout) {
        List<Optional<Lever.Place>> places = layout.levers().stream()
                .map(lever -> choices(lever).findFirst().orElse(Optional.empty()))
                .toList();
        return new Selection(Run.NEUTRAL, new Setting(layout, places).pushes());
    }

    private static Stream<Optional<Lever.Place>> choices(Lever lever) {
        Stream<Optional<Lever.Place>> places = lever.places().stream().map(Optional::of);
        return lever.neutral() ? Stream.concat(Stream.of(Optional.empty()), places) : places;
    }

    private static List<Optional<Lever.Place>> with(List<Optional<Lever.Place>> way, Optional<Lever.Place> choice) {
        List<Optional<Lever.Place>> more = new ArrayList<>(way);
        more.add(choice);
        return List.copyOf(more);
    }

    private static Stream<Box.Push> pushed(Layout layout, String rail, Side side) {
        if (layout.find(Clutch.class, rail).isPresent()) {
            return Stream.of(new Box.Push(rail, side, rail));
        }
        return layout.the(Rail.class, rail).forks().stream()
                .map(fork -> layout.the(Fork.class, fork).member())
                .filter(member -> layout.member(member).at(side).isPresent())
                .map(member -> new Box.Push(rail, side, member));
    }
}
