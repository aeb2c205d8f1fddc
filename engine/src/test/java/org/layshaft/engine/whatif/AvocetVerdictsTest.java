package org.layshaft.engine.whatif;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What becomes of each gear of Avocet, as a practitioner reads it off the layout: first gear is the rim of the 1-2
 * sleeve, and reverse runs over it.
 */
class AvocetVerdictsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # fault                               | 1    2    3    4    R    neutral
            1-2-fork bent side=front              | ?    note ok   ok   ok   ok
            1-2-fork bent side=rear extent=badly  | note lost ok   ok   ok   ok
            reverse-idler-fork bent               | ok   ok   ok   ok   ?    ok
            1-2-fork broken at=rear               | note lost lock lock lock lost
            1-2-fork broken at=neutral            | lost lost ok   ok   ok   ok
            reverse-idler-fork broken at=front    | lock lock lock lock note lost
            3-4-fork broken at=front              | lock lock lost note lock lost
            1-2-sleeve stuck at=rear              | note lost lost lost lost lost
            3-4-sleeve stuck at=neutral           | ok   ok   lost lost ok   ok
            R-detent weak                         | ok   ok   ok   ok   note ok
            interlock-pin missing                 | ok   ok   note note note ok
            clutch dragging                       | note note note note note ok
            """)
    void selector_and_clutch(String fault, String expected) {
        VerdictRow.of("avocet", fault).mustBe(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # fault                               | 1    2    3    4    R    neutral
            second stripped                       | ok   lost ok   ok   ok   ok
            cluster-second stripped               | note lost note note note note
            cluster-driven stripped               | lost lost lost ok   lost ok
            # slid into mesh: they touch nothing in the other gears
            first stripped                        | lost ok   ok   ok   lost ok
            cluster-first stripped                | lost ok   ok   ok   ok   ok
            cluster-reverse stripped              | ok   ok   ok   ok   lost ok
            reverse-idler stripped                | ok   ok   ok   ok   lost ok
            second seized                         | lock ok   lock lock lock lost
            third seized                          | lock lock ok   lock lock lost
            second-ring worn                      | ok   note ok   ok   ok   ok
            third-clutching-teeth rounded         | ok   ok   note ok   ok   ok
            1-2-hub stripped                      | lost lost ok   ok   lost ok
            3-4-hub stripped                      | ok   ok   lost lost ok   ok
            input cut                             | lost lost lost lost lost ok
            countershaft cut place=cluster-driven | lost lost lost ok   lost ok
            countershaft cut place=cluster-second | lost ok   ok   ok   lost ok
            countershaft cut place=cluster-reverse| lost ok   ok   ok   ok   ok
            output cut place=3-4-sleeve           | ok   ok   lost lost ok   ok
            output cut place=1-2-sleeve           | lost lost lost lost lost ok
            """)
    void gears_rings_teeth_hubs_and_shafts(String fault, String expected) {
        VerdictRow.of("avocet", fault).mustBe(expected);
    }
}
