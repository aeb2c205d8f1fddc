package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.WhatIf;

/** Several faults at once are ordinary input. */
class SeveralFaultsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # faults                                                              | 1    2    3    4    5    R    neutral
            third stripped; fourth-ring worn                                      | ok   ok   lost note ok   ok   ok
            cluster-first stripped; third-ring worn                               | lost note note note note note note
            # stripped, the seized gear drives nothing, but its bare rim turns against the countershaft
            third seized; third stripped                                          | note note lost note note note note
            third seized; cluster-third stripped                                  | note note lost note note note note
            # cut off from the input, the seized gear still holds the output where another gear joins it
            third seized; countershaft cut place=cluster-driven                   | lock lock lost lock ok   lock ok
            # a seized gear drives whatever is selected
            third seized; first stripped                                          | lost lock ok   lock lock lock lost
            third seized; 3-4-fork bent side=front extent=badly                   | lock lock ok   lock lock lock lost
            # a stuck sleeve holds its rail; the rail keeps its neighbours, less what a missing piece lets go
            3-4-sleeve stuck at=front; interlock-plunger-1 missing                | lock lock lost note lost lost lost
            3-4-sleeve stuck at=front; interlock missing                          | lock lock lost note lock lock lost
            1-2-sleeve stuck at=rear; interlock-pin missing                       | note lost lost lost lock lock lost
            # a broken fork lets rails go where they like
            3-4-fork broken at=front; 1-2-fork broken at=neutral                  | lost lost lost note lock lock lost
            3-4-fork broken at=front; fourth stripped                             | note note lost lost note note note
            first seized; third seized                                            | lock lock lock lock lock lock lock
            first stripped; second stripped; third stripped                       | lost lost lost ok   ok   ok   ok
            3-4-hub stripped; 1-2-fork bent side=rear; clutch dragging            | note ?    lost lost note note ok
            """)
    void curlew(String faults, String expected) {
        VerdictRow.of("curlew", faults).mustBe(expected);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # faults                                                 | 1    2    3    4    5    R    neutral
            left-half-shaft broken; right-half-shaft broken          | lost lost lost lost lost lost ok
            left-half-shaft broken; third-ring worn                  | lost lost lost lost lost lost ok
            first seized; input cut place=input-second               | ok   lock lost lost lost lock lost
            fifth seized; output-fifth stripped                      | note note note note lost note note
            5-fork broken at=front; reverse-idler-fork broken at=rear | lock lock lock lock lock lock lock
            """)
    void plover(String faults, String expected) {
        VerdictRow.of("plover", faults).mustBe(expected);
    }

    @Test
    void a_fault_told_twice_is_one() {
        WhatIf once = Bench.whatIf("curlew", "3-4-fork bent side=front");
        WhatIf twice = Bench.whatIf("curlew", "3-4-fork bent side=front; 3-4-fork bent side=front");
        assertEquals(once, twice);
        assertEquals(1, twice.faults().size());
    }

    @Test
    void a_fault_told_twice_with_more_the_second_time_is_one() {
        WhatIf once = Bench.whatIf("curlew", "3-4-fork bent side=front extent=badly");
        WhatIf more = Bench.whatIf("curlew", "3-4-fork bent; 3-4-fork bent side=front extent=badly");
        assertEquals(Bench.verdicts(once), Bench.verdicts(more));
        assertEquals(1, Bench.gear(more, "3").possibilities().size());
    }

    @Test
    void what_is_known_of_one_fault_tells_what_another_leaves_open() {
        String known = "3-4-sleeve stuck at=front; 3-4-fork broken at=front";
        WhatIf answer = Bench.whatIf("curlew", "3-4-sleeve stuck at=front; 3-4-fork broken");
        assertEquals(Bench.verdicts(Bench.whatIf("curlew", known)), Bench.verdicts(answer));
    }
}
