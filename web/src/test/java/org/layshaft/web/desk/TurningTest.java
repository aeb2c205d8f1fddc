package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.Demo;
import org.layshaft.web.desk.Turning.Sense;

class TurningTest {
    private final Layout curlew = Demo.layout("curlew");

    @Test
    void sensesFollowTheSignAndWhatIsNotFixedIsFree() {
        List<Turning> turning =
                turning(Map.of("input", Fraction.ONE, "countershaft", Fraction.of(-24, 47), "third", Fraction.ZERO));

        assertEquals(Sense.SAME, of("input", turning).sense());
        assertEquals(Sense.OPPOSITE, of("countershaft", turning).sense());
        assertEquals(Sense.STANDS, of("third", turning).sense());
        assertEquals(Sense.FREE, of("output", turning).sense());
    }

    @Test
    void whatStandsInTheCaseIsNoPartThatTurns() {
        assertFalse(turning(Map.of()).stream().anyMatch(each -> each.part().equals("idler-spindle")));
    }

    @Test
    void aCutShaftIsShownByItsPieces() {
        List<Turning> turning = turning(Map.of("countershaft#front", Fraction.ONE));

        assertTrue(turning.stream().noneMatch(each -> each.part().equals("countershaft")));
        assertEquals(
                "front piece of the countershaft",
                of("countershaft#front", turning).name());
    }

    private List<Turning> turning(Map<String, Fraction> speeds) {
        Motion motion = new Motion(Motion.Outcome.NEUTRAL, speeds, Set.of(), Optional.empty());
        return Turning.of(curlew, Demo.desk().names(curlew), motion);
    }

    private static Turning of(String part, List<Turning> turning) {
        return turning.stream()
                .filter(each -> each.part().equals(part))
                .findFirst()
                .orElseThrow();
    }
}
