package org.layshaft.engine.whatif;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What becomes of each gear of Plover, as a practitioner reads it off the layout: the drive leaves the output shaft at
 * its front, and reverse runs over the outside of the 1-2 sleeve.
 */
class PloverVerdictsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # fault                               | 1    2    3    4    5    R    neutral
            3-4-fork bent side=front extent=badly | ok   ok   note lost ok   ok   ok
            # one sleeve on a side: toward it the fork rubs, away from it the gear is in doubt
            5-fork bent                           | ok   ok   ok   ok   ?    ok   ok
            5-fork bent side=front                | ok   ok   ok   ok   note ok   ok
            5-fork bent side=rear extent=badly    | ok   ok   ok   ok   lost ok   ok
            reverse-idler-fork bent side=front    | ok   ok   ok   ok   ok   ?    ok
            reverse-idler-fork bent side=rear     | ok   ok   ok   ok   ok   note ok
            # the fork leaves its member where it is, and the rail goes on moving the other
            5-fork broken at=front                | lock lock lock lock note lock lost
            5-fork broken at=neutral              | ok   ok   ok   ok   lost ok   ok
            reverse-idler-fork broken at=rear     | lock lock lock lock lock note lost
            reverse-idler-fork broken at=neutral  | ok   ok   ok   ok   ok   lost ok
            1-2-fork broken at=front              | note lost lock lock lock lock lost
            # a stuck member holds its rail, and with the rail the other member
            5-sleeve stuck at=neutral             | ok   ok   ok   ok   lost lost ok
            5-sleeve stuck at=front               | lost lost lost lost note lost lost
            1-2-sleeve stuck at=neutral           | lost lost ok   ok   ok   ok   ok
            1-2-sleeve stuck at=rear              | lost note lost lost lost lost lost
            5-R-detent weak                       | ok   ok   ok   ok   note note ok
            interlock missing                     | note note note note note note ok
            interlock-plate missing               | note note note note note note ok
            clutch dragging                       | note note note note note note ok
            """)
    void selector_and_clutch(String fault, String expected) {
        VerdictRow.of("plover", fault).mustBe(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # fault                         | 1    2    3    4    5    R    neutral
            first stripped                  | lost ok   ok   ok   ok   ok   ok
            input-first stripped            | lost note note note note note note
            # fixed on the output, it clatters in neutral while the car rolls
            output-fifth stripped           | note note note note lost note note
            fifth stripped                  | ok   ok   ok   ok   lost ok   ok
            # in mesh with nothing but in reverse, so that nothing is heard elsewhere
            input-reverse stripped          | ok   ok   ok   ok   ok   lost ok
            sleeve-rim stripped             | ok   ok   ok   ok   ok   lost ok
            reverse-idler stripped          | ok   ok   ok   ok   ok   lost ok
            final-drive-pinion stripped     | lost lost lost lost lost lost ok
            ring-gear stripped              | lost lost lost lost lost lost note
            fifth seized                    | lock lock lock lock ok   lock lost
            second seized                   | lock ok   lock lock lock lock lost
            fourth-ring worn                | ok   ok   ok   note ok   ok   ok
            fifth-clutching-teeth rounded   | ok   ok   ok   ok   note ok   ok
            # reverse runs over the sleeve, and the sleeve sits on this hub
            1-2-hub stripped                | lost lost ok   ok   ok   lost ok
            5-hub stripped                  | ok   ok   ok   ok   lost ok   ok
            left-half-shaft broken          | lost lost lost lost lost lost ok
            right-half-shaft broken         | lost lost lost lost lost lost ok
            """)
    void gears_rings_teeth_hubs_and_half_shafts(String fault, String expected) {
        VerdictRow.of("plover", fault).mustBe(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # cut behind                              | 1    2    3    4    5    R    neutral
            input cut place=input-front-bearing       | lost lost lost lost lost lost ok
            input cut place=input-first               | ok   lost lost lost lost lost ok
            input cut place=input-reverse             | ok   lost lost lost lost ok   ok
            input cut place=input-second              | ok   ok   lost lost lost ok   ok
            input cut place=input-third               | ok   ok   ok   lost lost ok   ok
            input cut place=input-fourth              | ok   ok   ok   ok   lost ok   ok
            input cut place=input-rear-bearing        | ok   ok   ok   ok   lost ok   ok
            input cut place=fifth                     | ok   ok   ok   ok   lost ok   ok
            input cut                                 | ?    ?    ?    ?    lost ?    ok
            output cut place=output-front-bearing     | ok   ok   ok   ok   ok   ok   ok
            output cut place=final-drive-pinion       | lost lost lost lost lost lost ok
            output cut place=first                    | lost lost lost lost lost lost ok
            output cut place=1-2-sleeve               | ok   ok   lost lost lost ok   ok
            output cut place=third                    | ok   ok   lost lost lost ok   ok
            output cut place=3-4-sleeve               | ok   ok   ok   ok   lost ok   ok
            output cut place=output-rear-bearing      | ok   ok   ok   ok   lost ok   ok
            """)
    void cut_shafts(String fault, String expected) {
        VerdictRow.of("plover", fault).mustBe(expected);
    }
}
