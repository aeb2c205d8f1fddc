package org.layshaft.engine.fit.check;

import java.util.List;
import org.layshaft.engine.fit.check.FittingBox.Spot;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

/** Boxes in which everything fits, between them with something for every check to look at. */
final class FittingBoxes {
    private static final List<FittingBox> ALL = List.of(
            FittingBox.phalarope(),
            pressedHub(),
            thickRingGear(),
            otherHands(),
            straightCut(),
            needlesAtThePilot(),
            speedDriveAlongside());

    private FittingBoxes() {}

    static List<FittingBox> all() {
        return ALL;
    }

    /** The hub is pressed on instead of splined. */
    static FittingBox pressedHub() {
        return FittingBox.phalarope()
                .always("1-2-hub", "", Fact.of(FactName.HELD_BY, "press"))
                .always("1-2-hub", "", Fact.of(FactName.SEAT_MM, 44.96))
                .always("1-2-hub", "", Fact.of(FactName.SEAT_LENGTH_MM, 24))
                .always("output", "1-2-hub", Fact.of(FactName.HELD_BY, "press"))
                .always("output", "1-2-hub", Fact.of(FactName.SEAT_MM, 45))
                .always("output", "1-2-hub", Fact.of(FactName.SEAT_LENGTH_MM, 24));
    }

    /** 46 to 11 is more than the flange is made for, but the ring gear is thick. */
    static FittingBox thickRingGear() {
        return FittingBox.phalarope()
                .with("ring-gear", Fact.of(FactName.TEETH, 46))
                .with("ring-gear", Fact.of(FactName.MADE_FOR_RATIO, 4.1));
    }

    /** The hands of the second pair are the other way round, and the bearings bear it. */
    static FittingBox otherHands() {
        return FittingBox.phalarope()
                .with("cluster-second", Fact.of(FactName.HAND, "left"))
                .with("second", Fact.of(FactName.HAND, "right"));
    }

    /** The first pair is straight-cut, 20 and 40 teeth of module 2, and its case is bored for that. */
    static FittingBox straightCut() {
        return SpurPair.in(FittingBox.phalarope())
                .neverHad(new Spot(SpurPair.PINION, SpurPair.PINION_TEETH), FactName.PROFILE_SHIFT)
                .neverHad(new Spot(SpurPair.GEAR, ""), FactName.PROFILE_SHIFT);
    }

    /** A cage of needles at the pilot instead of a bearing with rings. */
    static FittingBox needlesAtThePilot() {
        FittingBox box = FittingBox.phalarope();
        for (FactName fact : List.of(FactName.BORE_MM, FactName.OUTSIDE_MM, FactName.WIDTH_MM)) {
            box = box.neverHad(new Spot("pilot-bearing", ""), fact);
        }
        return box.always("pilot-bearing", "", Fact.of(FactName.NEEDLES_INSIDE_MM, 22))
                .always("pilot-bearing", "", Fact.of(FactName.NEEDLES_OUTSIDE_MM, 28))
                .always("pilot-bearing", "", Fact.of(FactName.NEEDLES_WIDTH_MM, 17));
    }

    /** The driven gear of the speed drive stands alongside its driving gear, straight-cut both. */
    static FittingBox speedDriveAlongside() {
        return FittingBox.phalarope()
                .always("speed-driving", "", Fact.of(FactName.HELIX_DEG, 0))
                .always("speed-driven", "", Fact.of(FactName.HELIX_DEG, 0))
                .always("box-case", "speed-driving/speed-driven", Fact.of(FactName.CENTRE_MM, 20.125));
    }
}
