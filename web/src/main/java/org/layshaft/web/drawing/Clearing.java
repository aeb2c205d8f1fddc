package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** Keeps what stands on different shafts of one line apart, but for the gears of an epicyclic set, which lie in one another. */
final class Clearing {
    private final Layout layout;
    private final Lines lines;
    private final Sizes sizes;
    private final Spacing spacing;
    private final Planets planets;
    private final Set<Set<String>> kept = new LinkedHashSet<>();

    Clearing(Layout layout, Lines lines, Sizes sizes, Spacing spacing) {
        this.layout = layout;
        this.lines = lines;
        this.sizes = sizes;
        this.spacing = spacing;
        this.planets = new Planets(layout);
    }

    /** One demand at a time, as each moves everything; a pair that can stand neither way is left. */
    void clear() {
        while (clearOne(spacing.places())) {}
    }

    void bearingsOutside() {
        lines.free().forEach(this::bearingsOutside);
    }

    /** A shaft's first bearing in the case lies before what the others of its line have, and its last one behind that. */
    private void bearingsOutside(String line) {
        List<String> items = items(line);
        lines.shafts(line).forEach(shaft -> {
            List<String> own = shaft.along().stream().filter(items::contains).toList();
            boolean rear = own.size() == 1 && !shaft.id().equals(layout.input());
            for (String item : items) {
                if (!own.isEmpty() && !own.contains(item)) {
                    String first = own.get(0);
                    String last = own.get(own.size() - 1);
                    if (isInCase(first) && !rear) {
                        spacing.atLeast(first, item, apart(first, item));
                    }
                    if (isInCase(last) && (rear || own.size() > 1)) {
                        spacing.atLeast(item, last, apart(item, last));
                    }
                }
            }
        });
    }

    private boolean isInCase(String item) {
        return layout.find(Bearing.class, item)
                .filter(bearing -> bearing.outer().equals(Bearing.CASE))
                .isPresent();
    }

    private boolean clearOne(Map<String, Double> places) {
        for (String line : lines.free()) {
            List<String> items = items(line);
            for (String one : items) {
                for (String other : items) {
                    boolean before = places.get(one) <= places.get(other) && !one.equals(other);
                    double apart = apart(one, other);
                    if (before && places.get(other) - places.get(one) < apart - 0.01 && kept.add(Set.of(one, other))) {
                        if (!spacing.atLeast(one, other, apart)) {
                            spacing.atLeast(other, one, apart);
                        }
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private double apart(String one, String other) {
        if (sameShaft(one, other) || sameSet(one, other)) {
            return Double.NEGATIVE_INFINITY;
        }
        return room(one) + Sizes.GAP + room(other);
    }

    private double room(String item) {
        return sizes.half(item)
                + (layout.find(Gear.class, item).filter(planets::isInSet).isPresent() ? Sizes.BESIDE_PLANETS : 0);
    }

    private boolean sameShaft(String one, String other) {
        return Coaxial.carrier(layout, one).equals(Coaxial.carrier(layout, other));
    }

    private boolean sameSet(String one, String other) {
        return layout.find(Gear.class, one).filter(planets::isInSet).isPresent()
                && layout.find(Gear.class, other).filter(planets::isInSet).isPresent();
    }

    private List<String> items(String line) {
        List<String> noses =
                Lines.between(layout).stream().map(bearing -> bearing.id()).toList();
        Stream<String> along = lines.shafts(line).stream().map(Shaft::along).flatMap(List::stream);
        Stream<String> differentials = lines.differentials(line).stream().map(Differential::id);
        List<String> items = new ArrayList<>(Stream.concat(along, differentials).toList());
        items.removeAll(noses);
        return items;
    }
}
