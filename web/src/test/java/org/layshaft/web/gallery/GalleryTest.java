package org.layshaft.web.gallery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.web.Demo;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.gallery.Gallery.Found;
import org.layshaft.web.gallery.Wanted.Term;

class GalleryTest {
    private static final Gallery GALLERY = new Gallery(Demo.desk().knowledge(), Demo.desk()::box);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            two-shaft, five-speed, reverse on a sleeve        | sandpiper
            a transaxle with six speeds, reverse synchronised | godwit lapwing sanderling
            crash box                                         | avocet ibis phalarope
            TWIN LAYSHAFT                                     | heron
            axle with limited slip                            | snipe woodcock
            transfer case, chain driven                       | dotterel greenshank
            inline, four speeds, power take-off               | spoonbill
            double clutch                                     | sanderling
            motorcycle box                                    | turnstone
            not a transaxle, overdrive top                    | crane redshank whimbrel
            inline without a sliding idler, at most 4 speeds  | phalarope spoonbill
            Plover                                            | plover
            """)
    void wordsFindLayouts(String words, String ids) {
        Found found = find(words);

        assertEquals(List.of(ids.split(" ")), ids(found), () -> found.wanted().toString());
        assertEquals(List.of(), found.wanted().leftOver());
    }

    @Test
    void whatIsUnderstoodIsSaidAndWhatIsNotToo() {
        Wanted wanted = find("please find me a two-shaft five-speed in pink, reverse on a sleeve")
                .wanted();

        assertEquals(
                List.of("2 shafts", "5 forward speeds", "reverse on a sleeve"),
                wanted.terms().stream().map(Term::says).toList());
        assertEquals(List.of("please", "pink"), wanted.leftOver());
    }

    @Test
    void theLongerWordsGoBeforeThoseInThem() {
        assertEquals(
                List.of("differential lock"),
                find("diff lock").wanted().terms().stream().map(Term::says).toList());
        assertEquals(
                List.of("limited-slip differential"),
                find("limited slip differential").wanted().terms().stream()
                        .map(Term::says)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            at least five speeds   | true  | true
            five or more speeds    | true  | true
            more than five speeds  | false | true
            fewer than 6 speeds    | true  | false
            at most five gears     | true  | false
            """)
    void numbersAreHeldAgainst(String words, boolean five, boolean six) {
        List<String> found = ids(find(words));

        assertEquals(five, found.contains("plover"));
        assertEquals(six, found.contains("lapwing"));
    }

    /** Every property can be said: its own words are understood as it and as nothing else. */
    @ParameterizedTest
    @EnumSource(Property.class)
    void everyPropertyIsUnderstoodByItsOwnWords(Property property) {
        Found found = find(property.says());

        List<String> chosen = ids(GALLERY.find(Optional.empty(), List.of(property.word()), Optional.empty()));
        assertTrue(
                found.wanted().terms().stream().map(Term::says).toList().contains(property.says())
                        || property == Property.NO_REVERSE
                        || property == Property.SEVERAL_LEVERS
                        || property == Property.OFFSET
                        || property == Property.SYNCHRONISED
                        || property == Property.REVERSE_BY_GEAR
                        || property == Property.SLIDING,
                () -> found.wanted().toString());
        assertEquals(chosen, ids(found), () -> found.wanted().toString());
    }

    @Test
    void whatIsChosenNarrowsWhatWasWritten() {
        Found found = GALLERY.find(Optional.of("transaxle"), List.of("overdrive"), Optional.of("5"));

        assertEquals(List.of("plover", "sandpiper"), ids(found));
        assertEquals(2, found.with(Property.OVERDRIVE));
        assertTrue(found.bySpeeds().containsKey(6), "the number chosen does not hide the others");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "???", "<b>", "((((", "no", "not without", "shaft", "zero-speed"})
    void oddWordsDoNoHarm(String words) {
        assertEquals(25, find(words).all().size());
    }

    @Test
    void whatCannotBeChosenIsRefused() {
        assertThrows(BadInputException.class, () -> GALLERY.find(Optional.empty(), List.of("wings"), Optional.empty()));
        assertThrows(BadInputException.class, () -> GALLERY.find(Optional.empty(), List.of(), Optional.of("many")));
        assertThrows(
                BadInputException.class, () -> GALLERY.find(Optional.of("x".repeat(301)), List.of(), Optional.empty()));
    }

    private static Found find(String words) {
        return GALLERY.find(Optional.ofNullable(words), List.of(), Optional.empty());
    }

    private static List<String> ids(Found found) {
        return found.found().stream().map(each -> each.layout().id()).toList();
    }
}
