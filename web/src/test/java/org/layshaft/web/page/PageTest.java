package org.layshaft.web.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.layshaft.web.Demo;
import org.layshaft.web.asking.Intent;

/** What stands in the HTML itself, and so is there without a script. */
class PageTest {
    private static final Pages PAGES = new Pages(Demo.desk());
    private static final Address CURLEW = Address.of("curlew");

    @Test
    void aQuestionIsAnsweredInThePage() {
        String page = PAGES.page(CURLEW.asking("which gears still work if the 3-4 fork is bent"));

        assertTrue(page.contains("<span class=\"label\">Understood as</span>"), page);
        assertEquals(2, count(page, "may work or may not</td>"));
        assertEquals(4, count(page, "</svg>\n works</td>"));
        assertTrue(page.contains("Before anybody works on it"), page);
        assertTrue(page.contains("<svg class=\"drawing\""), page);
    }

    @Test
    void theReasonsStandInIt() {
        String page = PAGES.page(supposing("3-4-fork bent side=rear extent=badly"));

        assertTrue(page.contains("the 3-4 fork is bent badly toward the rear (3rd)"), page);
        assertTrue(page.contains("<details class=\"why\">"), page);
    }

    @Test
    void aSoundBoxHasNoCautions() {
        assertFalse(PAGES.page(CURLEW).contains("Before anybody works on it"));
    }

    @Test
    void withoutALayoutTheFirstIsShown() {
        String first =
                Demo.desk().knowledge().layouts().values().iterator().next().name();
        String page = PAGES.page(new Address(
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of()));

        assertTrue(page.contains("<title>%s, sound – Layshaft</title>".formatted(first)), page);
    }

    @Test
    void aPartOffersItsFailuresWithWhatCanBeTold() {
        String page = PAGES.page(CURLEW.at("3-4-fork"));

        assertTrue(page.contains("<h3 id=\"part-heading\">3-4 fork</h3>"), page);
        assertTrue(page.contains("href=\"/?layout=curlew&amp;fault=3-4-fork+bent&amp;part=3-4-fork\""), page);
        assertTrue(page.contains("fault=3-4-fork+bent+side%3Dfront"), page);
    }

    @Test
    void aFaultOfTheQuestionCanBeTakenAway() {
        String page = PAGES.page(CURLEW.asking("which gears still work if the 3-4 fork is bent"));

        assertTrue(page.contains("<a class=\"off\" href=\"/?layout=curlew\""), page);
    }

    @Test
    void aFaultOfTheAddressCanBeTakenAwayAndTheQuestionStays() {
        String page = PAGES.page(supposing("first stripped").asking("what turns in neutral"));

        assertTrue(page.contains("<a class=\"off\" href=\"/?layout=curlew&amp;q=what+turns+in+neutral\""), page);
    }

    @Test
    void theGearDrawnIsTheCurrentStep() {
        String page = PAGES.page(CURLEW.inGear("3"));

        assertTrue(page.contains("gear=3#sheet\" aria-current=\"true\""), page);
        assertTrue(page.contains("<dd>Gear 3</dd>"), page);
    }

    @Test
    void whatIsNotUnderstoodIsSaidWithWhatWouldBe() {
        String page = PAGES.page(CURLEW.asking("fish and chips"));

        assertTrue(page.contains("<p class=\"trouble\">"), page);
        assertTrue(page.contains("What can be answered"), page);
    }

    @Test
    void examplesAreUnderstood() {
        List<String> examples = new Examples(Demo.desk())
                .of(Demo.layout("curlew")).stream().map(Examples.Example::text).toList();

        assertTrue(examples.size() >= 6, examples::toString);
        examples.forEach(
                example -> assertTrue(PAGES.page(CURLEW.asking(example)).contains("Understood as"), example));
    }

    @Test
    void everyIntentBelongsToASubject() {
        for (Intent intent : Intent.values()) {
            assertEquals(intent.isOfParts(), Subject.of(intent) == Subject.PARTS, intent.word());
        }
    }

    @Test
    void oneStartsFromAFewQuestionsThatAreNotOfParts() {
        Matcher few = Pattern.compile("<ul class=\"first-questions\".*?</ul>", Pattern.DOTALL)
                .matcher(PAGES.page(CURLEW));

        assertTrue(few.find());
        assertEquals(4, few.group().split("<li>").length - 1, few.group());
        assertTrue(few.group().contains("gears still work"), few.group());
        assertFalse(few.group().contains("SM-"), few.group());
        assertFalse(PAGES.page(CURLEW.asking("trace the power in third")).contains("first-questions"));
    }

    @Test
    void theDrawingAloneHasNoLinks() {
        String svg = PAGES.drawing(CURLEW.inGear("3"));

        assertTrue(svg.startsWith("<?xml"), svg);
        assertFalse(svg.contains("href"), svg);
    }

    private static Address supposing(String fault) {
        return new Address(
                Optional.of("curlew"), Optional.empty(), Optional.empty(), List.of(fault), Optional.empty(), List.of());
    }

    private static int count(String text, String part) {
        return (text.length() - text.replace(part, "").length()) / part.length();
    }
}
