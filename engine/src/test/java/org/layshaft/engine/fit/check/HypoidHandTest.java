package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

/** The pair of an axle whose pinion winds to the left, its crown to the right. */
class HypoidHandTest {
    private static final String SHAFT = "output";

    private static FittingBox otherHands() {
        return FittingBox.phalarope()
                .with(SHAFT, "pinion", Fact.of(FactName.HAND, "right"))
                .with("ring-gear", Fact.of(FactName.HAND, "left"));
    }

    @Test
    void a_pair_of_the_other_hands_wants_its_pinion_on_the_other_side() {
        assertEquals(Optional.of(Outcome.HOLDS), FittingBox.phalarope().outcome("hypoid-hand"));
        assertEquals(Optional.of(Outcome.FAILS), otherHands().outcome("hypoid-hand"));
        assertEquals(Optional.of(Outcome.HOLDS), otherHands().outcome("spiral-hand"));
    }

    @Test
    void where_the_axes_cross_either_hand_will_do() {
        FittingBox crossing = otherHands()
                .with(SHAFT, "pinion", Fact.of(FactName.OFFSET_MM, 0))
                .with("ring-gear", Fact.of(FactName.OFFSET_MM, 0));
        assertEquals(Optional.empty(), crossing.outcome("hypoid-hand"));
    }
}
