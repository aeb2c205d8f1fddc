package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.fit.Supply;
import org.layshaft.kb.catalogue.PartSet;

/**
 * What the parts counter says.
 *
 * @param set what was asked about; empty where every set was
 * @param boxes the boxes asked about
 * @param everyBox whether no box was named
 * @param place id of the place asked about
 * @param servings everywhere that it could stand, best first
 * @param thorough so many of the first are given in full, tried with as many further units as ever; the others perhaps with one
 * @param supplies what is supplied today: of the set first, then of what else has something to be said
 */
public record FitAnswer(
        Optional<PartSet> set,
        List<BuiltBox> boxes,
        boolean everyBox,
        Optional<Integer> serial,
        Optional<String> place,
        List<Serving> servings,
        int thorough,
        List<Supplied> supplies) {
    public FitAnswer {
        boxes = List.copyOf(boxes);
        servings = List.copyOf(servings);
        supplies = List.copyOf(supplies);
    }

    /**
     * What is supplied for a number.
     *
     * @param box for boxes of this build; empty for all boxes
     */
    public record Supplied(Optional<BuiltBox> box, Supply supply) {}

    FitAnswer with(List<Supplied> all) {
        return new FitAnswer(set, boxes, everyBox, serial, place, servings, thorough, all);
    }

    /** The best in each box where it could stand, in the order of the boxes. */
    public List<Serving> bestOfEachBox() {
        return boxes.stream()
                .flatMap(box -> servings.stream()
                        .filter(serving -> serving.box() == box)
                        .limit(1))
                .toList();
    }

    /** Whether it comes out otherwise in one build than in another. */
    public boolean dependsOnTheBuild() {
        return bestOfEachBox().stream().map(Serving::verdict).distinct().count() > 1;
    }

    /** What is given in full. */
    public List<Serving> inFull() {
        return servings.subList(0, thorough);
    }

    /** What is given in brief. */
    public List<Serving> inBrief() {
        return servings.subList(thorough, servings.size());
    }
}
