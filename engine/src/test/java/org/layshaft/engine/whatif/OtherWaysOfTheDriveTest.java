package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Verdict;

/** What lets no drive through loses only the gears whose drive goes that way. */
class OtherWaysOfTheDriveTest {

    /** Sanderling's odd gears and reverse have one clutch, its even gears the other. */
    @Test
    void a_clutch_inside_the_box_takes_the_gears_of_its_half() {
        for (GearVerdict gear :
                Bench.whatIf("sanderling", "odd-clutch burnt-out").gears()) {
            boolean odd = gear.direction() == Direction.REVERSE || Integer.parseInt(gear.gear()) % 2 == 1;
            assertEquals(odd ? Verdict.LOST : Verdict.WORKS, gear.verdict(), gear.gear());
        }
    }

    /** Ibis has no centre differential: with the front axle engaged, that drives alone. */
    @Test
    void the_differential_of_one_axle_takes_the_gears_that_have_no_other() {
        for (GearVerdict gear : Bench.whatIf("ibis", "rear-axle-differential-cross-shaft broken")
                .gears()) {
            boolean fourWheel = gear.gear().endsWith("four-wheel");
            assertEquals(fourWheel, gear.verdict() != Verdict.LOST, gear.gear());
        }
    }

    /** In front of the whole box there is no other way. */
    @Test
    void the_clutch_to_the_engine_takes_every_gear() {
        Bench.whatIf("curlew", "clutch burnt-out")
                .gears()
                .forEach(gear -> assertEquals(Verdict.LOST, gear.verdict(), gear.gear()));
    }
}
