package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;

/** Failures in words by themselves, as in addresses and on the command line. */
class FaultsInWordsTest {
    private static final Layout CURLEW = Saltmarsh.layout("curlew");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3-4-fork bent | 3-4-fork bent",
                "3-4-fork bent side=front extent=badly | 3-4-fork bent extent=badly side=front",
                "3-4-fork bent; third stripped | 3-4-fork bent, third stripped",
                "3-4-fork bent side=front + interlock-pin missing | 3-4-fork bent side=front, interlock-pin missing",
                "countershaft cut place=cluster-third and clutch dragging | countershaft cut place=cluster-third, clutch dragging",
                "3-4 fork bent toward third | 3-4-fork bent side=rear",
                "3-4 fork bent a little toward the front | 3-4-fork bent extent=slightly side=front",
                "badly bent third and fourth fork | 3-4-fork bent extent=badly",
                "the shift fork for 3rd is twisted | 3-4-fork bent",
                "5th baulk ring worn out, second gear stripped | input-gear-ring worn, second stripped",
                "2nd and 3rd blocking rings worn | second-ring worn, third-ring worn",
                "1-2 and 3-4 forks bent | 1-2-fork bent, 3-4-fork bent",
                "layshaft sheared in front of third | countershaft cut place=cluster-fourth",
                "mainshaft snapped between second and third | output cut place=third",
                "dog teeth rounded on fourth | fourth-clutching-teeth rounded",
                "detent of the 5-R rail weak | 5-R-detent weak",
                "3-4 slider jammed in neutral | 3-4-sleeve stuck at=neutral",
                "selector fork 1-2 snapped and left in first | 1-2-fork broken at=rear",
            })
    void isThis(String words, String faults) {
        FaultUnderstanding.Faults understood =
                assertInstanceOf(FaultUnderstanding.Faults.class, Saltmarsh.ASKING.understandFaults(CURLEW, words));
        assertEquals(
                faults,
                String.join(
                        ", ", understood.faults().stream().map(Fault::written).toList()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3-4-fork bent side=up",
                "3-4-fork bent colour=red",
                "countershaft cut place=input-gear",
                "5-6 fork bent",
                "fork bent",
                "3-4 fork",
                "3-4 fork bent by a gorilla",
                "nonsense",
            })
    void isAProblemThatOffersWhatIsMeant(String words) {
        FaultUnderstanding.Problem problem =
                assertInstanceOf(FaultUnderstanding.Problem.class, Saltmarsh.ASKING.understandFaults(CURLEW, words));
        assertFalse(problem.nearest().isEmpty(), problem.says());
        problem.nearest()
                .forEach(offer -> assertInstanceOf(
                        FaultUnderstanding.Faults.class, Saltmarsh.ASKING.understandFaults(CURLEW, offer), offer));
    }

    @Test
    void saysWhichValuesThereAre() {
        FaultUnderstanding.Problem problem =
                (FaultUnderstanding.Problem) Saltmarsh.ASKING.understandFaults(CURLEW, "3-4-fork bent side=up");
        assertEquals("side=up: it can be front or rear.", problem.says());
        assertTrue(problem.nearest().containsAll(List.of("3-4-fork bent side=front", "3-4-fork bent side=rear")));
    }
}
