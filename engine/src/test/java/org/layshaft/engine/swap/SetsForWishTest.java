package org.layshaft.engine.swap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.train.Boxes;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/** What the counter at Saltmarsh has for a Curlew whose third is 47/24 · 34/37. */
class SetsForWishTest {
    private static final PartsCounter COUNTER = PartsCounter.of(Boxes.knowledge());
    private static final BuiltBox CURLEW = COUNTER.boxes().get("curlew-early");
    private static final SetsForWish SETS = new SetsForWish(COUNTER, Reasoners.standard(Boxes.knowledge()));
    private static final Fraction THIRD = Fraction.of(47 * 34, 24 * 37);

    private static WishedSets sets(Wish wish) {
        return SETS.in(CURLEW, wish).value().orElseThrow();
    }

    private static List<SetOffer> offers(Wish wish) {
        return sets(wish).serving();
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

    /** A fourth with other helix than the one beside it is told with the rest, and why it does not serve. */
    @Test
    void whatMeetsTheWishAndDoesNotServeIsToldAfterWhatDoes() {
        WishedSets sets = sets(new Wish.Nearer("3", "4"));
        assertTrue(sets.lookedAt() > sets.offers().size(), () -> sets.lookedAt() + " looked at");
        assertEquals(sets.serving(), sets.offers().subList(0, sets.serving().size()));
        sets.others().forEach(offer -> assertTrue(offer.serving().verdict().compareTo(FitVerdict.FITS_WITH) > 0));
    }

    /** With the counter asked about every place in full, and the rules about every changed layout. */
    @Test
    void nothing_that_serves_and_meets_it_by_its_own_teeth_is_passed_over() {
        Wish wish = new Wish.Nearer("3", "2");
        Reasoner reasoner = Reasoners.standard(Boxes.knowledge());
        Layout layout = FittedGears.layout(CURLEW.fitted());
        Target target = new WishSolver(layout, reasoner).targetOf(wish).value().orElseThrow();
        Set<String> expected = COUNTER.catalogue().sets().values().stream()
                .flatMap(set -> COUNTER.placements(set, CURLEW).stream())
                .filter(placement -> third(layout, CURLEW.fitted().with(placement.parts()), reasoner)
                        .filter(target::isMetBy)
                        .isPresent())
                .map(placement -> COUNTER.serve(placement, CURLEW))
                .filter(serving -> serving.verdict() == FitVerdict.FITS || serving.verdict() == FitVerdict.FITS_WITH)
                .filter(serving -> third(layout, serving.fittedThen(), reasoner)
                        .filter(target::isMetBy)
                        .isPresent())
                .map(serving -> serving.placement().set().number())
                .collect(Collectors.toSet());
        assertEquals(
                expected,
                numbers(offers(wish)).stream()
                        .filter(number -> COUNTER.catalogue().sets().containsKey(number))
                        .collect(Collectors.toSet()));
    }

    private static Optional<Fraction> third(Layout layout, Fitted then, Reasoner reasoner) {
        return FittedGears.change(CURLEW.fitted(), then)
                .value()
                .flatMap(change -> reasoner.box(change.applyTo(layout)).gears().stream()
                        .filter(gear -> gear.takes("3-4-sleeve", Side.REAR))
                        .map(gear -> gear.ratio().absolute())
                        .findFirst());
    }

    @Test
    void what_no_set_meets_gets_no_offer() {
        assertEquals(List.of(), offers(new Wish.RatioOf("3", Fraction.of(5), Fraction.of(1, 100))));
        assertThrows(ImpossibleFactsException.class, () -> offers(new Wish.RatioOf("9", THIRD, Fraction.ZERO)));
    }
}
