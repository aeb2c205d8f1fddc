package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Serving;
import org.layshaft.web.Demo;

class FitSaidTest {

    private static FitAnswer answer(String set, String box) {
        return new FitDesk(Demo.desk().parts())
                .fit(new FitRequest(Optional.of(set), Optional.of(box), Optional.empty(), Optional.empty()));
    }

    /** The later output shaft wants the later first gear in boxes that have the earlier one. */
    @Test
    void where_builds_come_out_unlike_each_is_told() {
        FitAnswer answer = answer("SM-1103", "curlew");
        assertTrue(answer.dependsOnTheBuild());
        assertEquals(
                List.of(FitVerdict.FITS_WITH, FitVerdict.FITS, FitVerdict.FITS),
                answer.bestOfEachBox().stream().map(Serving::verdict).toList());
        String lead = FitSaid.lead(answer);
        assertTrue(
                lead.startsWith(
                        "It depends on the build. Curlew, first generation, serial numbers up to 4199, output shaft: It fits with companions: SM-1162"),
                lead);
        assertTrue(
                lead.contains(
                        "Curlew, second generation, serial numbers 4200 to 8999, output shaft: It fits as it is."),
                lead);
    }

    @Test
    void what_nobody_told_of_a_speed_drive_is_said_in_words_of_the_counter() {
        String lead = FitSaid.lead(answer("SM-1180", "knot"));
        assertTrue(lead.contains("whether the box has a speed drive"), lead);
        assertFalse(FitSaid.lead(answer("SM-1180", "plover-first")).contains("whether the box"), lead);
    }

    @Test
    void one_build_is_told_by_its_best_place() {
        FitAnswer answer = answer("SM-1154", "curlew-early");
        assertFalse(answer.dependsOnTheBuild());
        assertEquals(
                "Best of 14 places: Curlew, first generation, third gear and cluster third gear. It fits as it is.",
                FitSaid.lead(answer));
    }
}
