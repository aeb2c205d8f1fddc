package org.layshaft.engine.whatif;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of each gear of Curlew, as a practitioner reads it off the layout. */
class CurlewVerdictsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # fault                               | 1    2    3    4    5    R    neutral
            3-4-fork bent                         | ok   ok   ?    ?    ok   ok   ok
            3-4-fork bent side=front              | ok   ok   ?    note ok   ok   ok
            3-4-fork bent side=rear               | ok   ok   note ?    ok   ok   ok
            3-4-fork bent extent=slightly         | ok   ok   note note ok   ok   ok
            3-4-fork bent extent=badly            | ok   ok   ?    ?    ok   ok   ok
            3-4-fork bent side=front extent=badly | ok   ok   lost note ok   ok   ok
            3-4-fork bent side=rear extent=badly  | ok   ok   note lost ok   ok   ok
            1-2-fork bent                         | ?    ?    ok   ok   ok   ok   ok
            1-2-fork bent side=front extent=badly | lost note ok   ok   ok   ok   ok
            5-R-fork bent side=front              | ok   ok   ok   ok   note ?    ok
            5-R-fork bent side=rear extent=badly  | ok   ok   ok   ok   lost note ok
            3-4-fork broken at=front              | lock lock lost note lock lock lost
            3-4-fork broken at=neutral            | ok   ok   lost lost ok   ok   ok
            3-4-fork broken at=rear               | lock lock note lost lock lock lost
            3-4-fork broken                       | ?    ?    ?    ?    ?    ?    ?
            5-R-fork broken at=front              | lock lock lock lock note lost lost
            3-4-sleeve stuck at=front             | lost lost lost note lost lost lost
            3-4-sleeve stuck at=neutral           | ok   ok   lost lost ok   ok   ok
            3-4-sleeve stuck at=rear              | lost lost note lost lost lost lost
            3-4-sleeve stuck                      | ?    ?    ?    ?    ?    ?    ?
            5-R-sleeve stuck at=rear              | lost lost lost lost lost note lost
            1-2-detent weak                       | note note ok   ok   ok   ok   ok
            5-R-detent weak                       | ok   ok   ok   ok   note note ok
            interlock missing                     | note note note note note note ok
            interlock-pin missing                 | note note ok   ok   note note ok
            interlock-plunger-1 missing           | note note note note note note ok
            clutch dragging                       | note note note note note note ok
            """)
    void selector_and_clutch(String fault, String expected) {
        VerdictRow.of("curlew", fault).mustBe(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # fault                                     | 1    2    3    4    5    R    neutral
            first stripped                              | lost ok   ok   ok   ok   ok   ok
            third stripped                              | ok   ok   lost ok   ok   ok   ok
            # fixed on the countershaft, so that it turns, and clatters, with every gear and in neutral
            cluster-third stripped                      | note note lost note note note note
            cluster-reverse stripped                    | note note note note note lost note
            cluster-driven stripped                     | lost lost lost lost ok   lost ok
            input-gear stripped                         | lost lost lost lost note lost note
            reverse stripped                            | ok   ok   ok   ok   ok   lost ok
            reverse-idler stripped                      | ok   ok   ok   ok   ok   lost ok
            # in its own gear a seized gear does what its sleeve does; every other meets it
            third seized                                | lock lock ok   lock lock lock lost
            first seized                                | ok   lock lock lock lock lock lost
            reverse seized                              | lock lock lock lock lock ok   lost
            # on a spindle that stands, it holds the countershaft, and that the input
            reverse-idler seized                        | lock lock lock lock lock lock lock
            third-ring worn                             | ok   ok   note ok   ok   ok   ok
            input-gear-ring worn                        | ok   ok   ok   ok   note ok   ok
            second-clutching-teeth rounded              | ok   note ok   ok   ok   ok   ok
            reverse-clutching-teeth rounded             | ok   ok   ok   ok   ok   note ok
            3-4-hub stripped                            | ok   ok   lost lost ok   ok   ok
            5-R-hub stripped                            | ok   ok   ok   ok   lost lost ok
            """)
    void gears_rings_teeth_and_hubs(String fault, String expected) {
        VerdictRow.of("curlew", fault).mustBe(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # cut behind                                       | 1    2    3    4    5    R    neutral
            input cut place=input-bearing                      | lost lost lost lost lost lost ok
            input cut                                          | lost lost lost lost lost lost ok
            countershaft cut place=countershaft-front-bearing  | ok   ok   ok   ok   ok   ok   ok
            countershaft cut place=cluster-driven              | lost lost lost lost ok   lost ok
            countershaft cut place=cluster-reverse             | lost lost lost lost ok   ok   ok
            countershaft cut place=cluster-fourth              | lost lost lost ok   ok   ok   ok
            countershaft cut place=cluster-third               | lost lost ok   ok   ok   ok   ok
            countershaft cut place=cluster-second              | lost ok   ok   ok   ok   ok   ok
            countershaft cut place=cluster-first               | ok   ok   ok   ok   ok   ok   ok
            countershaft cut                                   | ?    ?    ?    ?    ok   ?    ok
            output cut place=pilot-bearing                     | ok   ok   ok   ok   ok   ok   ok
            output cut place=5-R-sleeve                        | ok   ok   ok   ok   lost lost ok
            output cut place=reverse                           | ok   ok   ok   ok   lost lost ok
            output cut place=fourth                            | ok   ok   ok   ok   lost lost ok
            output cut place=3-4-sleeve                        | ok   ok   lost lost lost lost ok
            output cut place=third                             | ok   ok   lost lost lost lost ok
            output cut place=second                            | ok   ok   lost lost lost lost ok
            output cut place=1-2-sleeve                        | lost lost lost lost lost lost ok
            output cut place=first                             | lost lost lost lost lost lost ok
            output cut                                         | ?    ?    ?    ?    ?    ?    ok
            """)
    void cut_shafts(String fault, String expected) {
        VerdictRow.of("curlew", fault).mustBe(expected);
    }
}
