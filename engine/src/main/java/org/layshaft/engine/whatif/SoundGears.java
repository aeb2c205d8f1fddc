package org.layshaft.engine.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.kb.layout.Layout;

/**
 * The gears of a sound layout: every way in which the levers can stand that drives, less those in which a lever stands
 * where it makes no difference, and what they are called.
 */
final class SoundGears {
    private final Map<List<?>, Found> byPlaces = new LinkedHashMap<>();

    private SoundGears(Layout layout) {
        TrainBuilder train = new TrainBuilder(layout, Changes.NONE);
        for (Levers.Setting setting : Levers.all(layout)) {
            Motion motion = TrainSolver.solve(train.at(setting.stance()));
            if (motion.ratio().isPresent()) {
                byPlaces.put(setting.places(), new Found(setting, motion));
            }
        }
    }

    private record Found(Levers.Setting setting, Motion motion) {
        Fraction ratio() {
            return motion.ratio().orElseThrow();
        }

        boolean isLike(Found other) {
            return ratio().equals(other.ratio()) && motion.carrying().equals(other.motion.carrying());
        }
    }

    /** Selections by name; in each group forward gears by falling ratio, then reverse. */
    static List<Selection> of(Layout layout) {
        return new SoundGears(layout).named();
    }

    /** Forward is the sense that more of the gears share. */
    private List<Selection> named() {
        List<Found> gears = byPlaces.values().stream().filter(this::isOfItsOwn).toList();
        int sense = gears.stream().mapToInt(gear -> gear.ratio().signum()).sum() < 0 ? -1 : 1;
        Map<String, List<Found>> groups = gears.stream()
                .collect(Collectors.groupingBy(
                        gear -> gear.setting().called(), LinkedHashMap::new, Collectors.toList()));
        List<Selection> named = new ArrayList<>();
        groups.forEach((called, group) -> {
            name(bySense(group, sense), "", called, named);
            name(bySense(group, -sense), "R", called, named);
        });
        return named;
    }

    private boolean isOfItsOwn(Found gear) {
        return gear.setting().withLess().noneMatch(less -> {
            Found other = byPlaces.get(less.places());
            return other != null && other.isLike(gear);
        });
    }

    private static List<Found> bySense(List<Found> group, int sense) {
        return group.stream()
                .filter(gear -> gear.ratio().signum() == sense)
                .sorted(Comparator.comparing((Found gear) -> gear.ratio().absolute())
                        .reversed())
                .toList();
    }

    private static void name(List<Found> gears, String letter, String called, List<Selection> named) {
        for (int i = 0; i < gears.size(); i++) {
            Found gear = gears.get(i);
            boolean alone = gears.size() == 1;
            String number = alone && (!letter.isEmpty() || !gear.setting().isNumbered()) ? "" : String.valueOf(i + 1);
            String name = (letter + number + " " + called).strip();
            // an axle, say, drives without anything being selected
            name = name.isEmpty() ? "drive" : name;
            named.add(new Selection(name, gear.setting().pushes()));
        }
    }
}
