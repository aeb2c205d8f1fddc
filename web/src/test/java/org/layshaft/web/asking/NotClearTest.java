package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions that may be several, or none. */
class NotClearTest {

    private static List<String> readings(String layout, String words) {
        return assertInstanceOf(Understanding.Ambiguous.class, Saltmarsh.understood(layout, words)).readings().stream()
                .map(reading -> reading.question().layout() + " " + Meant.by(reading.question()))
                .toList();
    }

    private static Understanding.NotUnderstood not(String layout, String words) {
        return assertInstanceOf(Understanding.NotUnderstood.class, Saltmarsh.understood(layout, words));
    }

    @Test
    void anyForkMayBeMeant() {
        assertEquals(
                List.of(
                        "curlew what-happens [1-2-fork bent]",
                        "curlew what-happens [3-4-fork bent]",
                        "curlew what-happens [5-R-fork bent]"),
                readings("curlew", "the fork is bent"));
    }

    @Test
    void anyBoxMayBeMeant() {
        assertEquals(
                List.of("avocet ratio [] 3", "curlew ratio [] 3", "plover ratio [] 3"),
                readings(null, "third ratio").stream().sorted().toList());
    }

    @Test
    void onlyOneBoxHasHalfShafts() {
        assertEquals(
                List.of(
                        "plover what-happens [left-half-shaft broken]",
                        "plover what-happens [right-half-shaft broken]"),
                readings(null, "half shaft broken"));
    }

    @Test
    void powerGoesSomewhereInEveryGear() {
        assertEquals(
                List.of("1", "2", "3", "4", "R").stream()
                        .map("avocet power-path [] %s"::formatted)
                        .toList(),
                readings("avocet", "power path"));
    }

    @Test
    void placeBetweenTwoThatAreNoNeighbours() {
        assertEquals(
                List.of(
                        "curlew what-happens [output cut place=third]",
                        "curlew what-happens [output cut place=second]",
                        "curlew what-happens [output cut place=1-2-sleeve]"),
                readings("curlew", "output shaft broken between third and first"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "curlew | 5-6 fork bent | Curlew has no 5-6 fork. It has the 1-2 fork, the 3-4 fork and the 5-R fork.",
                "curlew | 2-3 fork bent | Curlew has no 2-3 fork. It has the 1-2 fork, the 3-4 fork and the 5-R fork.",
                "curlew | fork stripped | The fork cannot be stripped here. It can be: worn, bent, pin-sheared, broken, misplaced.",
                "plover | interlock pin missing | Plover has no interlock pin; Avocet and Curlew have.",
                "curlew | sixth gear ratio | Curlew has no sixth gear. It has 1st, 2nd, 3rd, 4th, 5th and reverse.",
                "curlew | what is the ratio of 7th gear | Curlew has no 7th gear. It has 1st, 2nd, 3rd, 4th, 5th and reverse.",
                "curlew | does the differential turn in third | Curlew has no differential; Plover has.",
                "curlew | fifth gear stripped | Curlew has no wheel of its own for 5th.",
                "curlew | 3-4 fork bent with a flux capacitor | I did not understand what to make of “flux capacitor”.",
                "curlew | 1-2 fork bent toward 5th | The 1-2 fork serves 2nd and 1st, so it cannot be bent toward 5th.",
                "curlew | 3-4 sleeve stuck in second | The 3-4 sleeve serves 4th and 3rd, so it cannot be stuck in second.",
                "curlew | which way does it turn in third | It does not say which part is meant.",
            })
    void saysWhatIsWrong(String layout, String words, String says) {
        Understanding.NotUnderstood not = not(layout, words);
        assertEquals(says, not.says());
        assertFalse(not.nearest().isEmpty());
        not.nearest()
                .forEach(offer -> assertInstanceOf(
                        Understanding.Understood.class, Saltmarsh.ASKING.understand(Optional.empty(), offer), offer));
    }

    @Test
    void aPlateIsOfferedForAPin() {
        assertEquals(
                List.of("what happens in Plover with the interlock plate missing"),
                not("plover", "interlock pin missing").nearest());
    }

    @Test
    void likeliestIsOfferedFirst() {
        assertEquals(
                "the ratios of all gears in Curlew",
                not("curlew", "automatic box ratios").nearest().get(0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "what does a new gearbox cost",
                "torque wrench setting for the drain plug",
                "what is the weather like",
                "how do I bake a cake",
                "automatic box with a torque converter",
                "3-4 fork",
                "?",
                "   ",
            })
    void isOutsideAllThis(String words) {
        assertTrue(nearest(Saltmarsh.understood("curlew", words)).stream().allMatch(offer -> offer.contains("Curlew")));
    }

    private static List<String> nearest(Understanding understanding) {
        return understanding instanceof Understanding.Declined declined
                ? declined.nearest()
                : assertInstanceOf(Understanding.NotUnderstood.class, understanding)
                        .nearest();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "what does a new gearbox cost",
                "flux capacitor bent",
                "3-4 fork",
                "fork stripped",
                "automatic box ratios"
            })
    void offersFewThings(String words) {
        int offers = nearest(Saltmarsh.understood("curlew", words)).size();
        assertTrue(offers >= 1 && offers <= 5, () -> offers + " offers");
    }

    @Test
    void unknownLayoutIsNamed() {
        assertTrue(not("dunlin", "third ratio").says().contains("'dunlin'"));
    }
}
