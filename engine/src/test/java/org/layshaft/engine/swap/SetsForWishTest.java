package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.train.Boxes;

/** What the counter at Saltmarsh has for a Curlew whose third is 47/24 · 34/37. */
class SetsForWishTest {
    private static final PartsCounter COUNTER = PartsCounter.of(Boxes.knowledge());
    private static final BuiltBox CURLEW = COUNTER.boxes().get("curlew-early");
    private static final SetsForWish SETS = new SetsForWish(COUNTER, Reasoners.standard(Boxes.knowledge()));
    private static final Fraction THIRD = Fraction.of(47 * 34, 24 * 37);

    private static List<SetOffer> offers(Wish wish) {
        return SETS.in(CURLEW, wish).value().orElseThrow();
    }

    private static Set<String> numbers(List<SetOffer> offers) {
        return offers.stream()
                .map(offer -> offer.serving().placement().set().number())
                .collect(Collectors.toSet());
    }

    @Test
    void a_third_nearer_fourth_is_the_close_ratio_pair() {
        List<SetOffer> offers = offers(new Wish.Nearer("3", "4"));
        assertTrue(numbers(offers).contains("SM-1154"), () -> numbers(offers).toString());
        SetOffer pair = offers.stream()
                .filter(offer -> offer.serving().placement().set().number().equals("SM-1154"))
                .findFirst()
                .orElseThrow();
        assertEquals(Fraction.of(47 * 32, 24 * 38), pair.ratio());
        assertEquals(FitVerdict.FITS, pair.serving().verdict());
        offers.forEach(offer -> assertTrue(offer.ratio().compareTo(THIRD) < 0));
    }

    @Test
    void a_third_nearer_second_is_another_pair() {
        List<SetOffer> offers = offers(new Wish.Nearer("3", "2"));
        assertTrue(numbers(offers).contains("SM-1158"), () -> numbers(offers).toString());
        offers.forEach(offer -> assertTrue(offer.ratio().compareTo(THIRD) > 0));
    }

    @Test
    void what_is_nearest_to_the_wish_comes_first() {
        Fraction wished = Fraction.of(47 * 32, 24 * 38);
        List<SetOffer> offers = offers(new Wish.RatioOf("3", wished, Fraction.of(1, 10)));
        assertEquals(Fraction.ZERO, offers.get(0).distance());
        for (int place = 1; place < offers.size(); place++) {
            assertTrue(
                    offers.get(place - 1).distance().compareTo(offers.get(place).distance()) <= 0);
        }
    }

    @Test
    void what_no_set_meets_gets_no_offer() {
        assertEquals(List.of(), offers(new Wish.RatioOf("3", Fraction.of(5), Fraction.of(1, 100))));
        assertThrows(ImpossibleFactsException.class, () -> offers(new Wish.RatioOf("9", THIRD, Fraction.ZERO)));
    }
}
