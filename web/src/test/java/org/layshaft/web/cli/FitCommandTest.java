package org.layshaft.web.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitCommandTest {
    @Test
    void theLaterThirdPairInAnEarlyBoxNeedsTheLaterSynchroniser() {
        Ran ran = Ran.with("fit", "SM-1152", "--box", "curlew", "--serial", "100", "--place", "third");
        String out = ran.out().replaceAll("\\s+", " ");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(out.contains("It fits with companions: SM-1171"), out);
        assertTrue(
                out.contains("Number of clutching teeth: the third gear SM-1223: 39; the 3-4 sleeve SM-1040: 36;"
                        + " must be the same (follows from the geometry); misses by 3."),
                out);
        assertTrue(out.contains("Hold") || out.contains("hold it against the maker's data"), out);
    }

    @Test
    void itsOwnPairFitsItsOwnBox() {
        Ran ran = Ran.with("fit", "sm-1150", "--box", "curlew-early", "--place", "third gear");

        assertTrue(ran.out().contains("third gear and cluster third gear. It fits as it is."), ran::out);
    }

    @Test
    void withNothingItListsSetsAndBoxes() {
        String out = Ran.with("fit").out();

        assertTrue(
                out.lines().anyMatch(line -> line.matches(" *SM-1160 +Curlew reverse gears, earlier +train .*")), out);
        assertTrue(out.lines().anyMatch(line -> line.matches(" *curlew-late +curlew .*serial numbers from 9000")), out);
    }

    @Test
    void wordsNarrowTheList() {
        String out = Ran.with("fit", "--find", "close THIRD").out();

        assertTrue(out.contains("SM-1154"), out);
        assertFalse(out.contains("SM-1150"), out);
        assertTrue(Ran.with("fit", "--find", "sprocket wrench").out().contains("Nothing in the catalogue holds"));
    }

    @Test
    void setsAgainstBoxes() {
        Ran ran = Ran.with("cross", "--box", "curlew", "--shape", "pair");

        assertEquals(0, ran.status(), ran::err);
        assertTrue(ran.err().contains("81 of 81 sets") || ran.err().matches("(?s).*(\\d+) of \\1 sets\\R.*"), ran::err);
        assertTrue(
                ran.out().lines().anyMatch(line -> line.matches(" *SM-1150 +F +F +[Fn] +Curlew third pair, 37/34")),
                ran::out);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fit SM-1                              | No set or part has the number "SM-1"
            fit SM-1152 --box curlew --serial x   | The serial number "x" cannot be read
            fit SM-1152 --serial 3                | Give the box too
            fit --place third                     | Neither a set nor a box is given
            fit SM-1152 --box dotterel            | What stands in a Dotterel is not known
            fit SM-1152 --box curlew-early --serial 9999 | No box of Curlew has the serial number 9999
            cross --verdict well                  | There is no verdict "well"
            cross --box duck --shape lump         | There is no shape "lump"
            """)
    void whatCannotBeUsedIsSaid(String command, String said) {
        Ran ran = Ran.with(command.split(" "));

        assertEquals(2, ran.status(), ran::out);
        assertTrue(ran.err().contains(said), ran::err);
    }
}
