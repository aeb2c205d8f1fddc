package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Serving;
import org.layshaft.web.Demo;

class ExchangeWordingTest {

    private static Serving best(String set, String box) {
        return new FitDesk(Demo.desk().parts())
                .fit(new FitRequest(Optional.of(set), Optional.of(box), Optional.empty(), Optional.empty()))
                .servings()
                .get(0);
    }

    /** Both gears wind the other way; a bearing of either shaft holds it toward both ends. */
    @Test
    void aPairOfTheOtherHandTurnsTheThrustRound() {
        Serving winch = best("SM-1156", "curlew-early");
        assertEquals(FitVerdict.FITS, winch.verdict());
        assertEquals(
                List.of(
                        "The thrust of the cluster third gear on the countershaft is the other way round: the teeth wind the"
                                + " other way. What holds the shaft, and so carries it now: the countershaft rear bearing"
                                + " SM-9015 toward both ends.",
                        "The thrust of the third gear on the output shaft is the other way round: the teeth wind the other"
                                + " way. What holds the shaft, and so carries it now: the output bearing SM-9010 toward both"
                                + " ends."),
                ExchangeWording.thrust(winch));
        assertTrue(FitWording.besides(winch).containsAll(ExchangeWording.thrust(winch)));
        assertEquals(List.of(), ExchangeWording.thrust(best("SM-1150", "curlew-early")));
    }

    @Test
    void aShaftIsShimmedAgainAndABevelPairSetAgain() {
        assertEquals(
                List.of(
                        "Measure and set again the end float or preload of the output shaft: shims that suited the old parts"
                                + " suit these only where measuring says so."),
                ExchangeWording.setAgain(best("SM-1162", "curlew-early")));
        assertEquals(
                List.of(
                        "Set again the mounting distance and the backlash of the drive pinion and the ring gear, and check"
                                + " the contact pattern."),
                ExchangeWording.setAgain(best("SM-4052", "knot")));
        assertEquals(List.of(), ExchangeWording.setAgain(best("SM-1150", "curlew-early")));
    }

    @Test
    void nothingIsSetForWhatDoesNotFit() {
        Serving strange = best("SM-1157", "curlew-early");
        assertEquals(FitVerdict.DOES_NOT_FIT, strange.verdict());
        assertEquals(List.of(), ExchangeWording.setAgain(strange));
        assertEquals(List.of(), ExchangeWording.thrust(strange));
    }
}
