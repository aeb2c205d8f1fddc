package org.layshaft.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of changes and of the bench, and questions about parts on the page of a box. */
class SwapPageTest {
    private static Served served;

    @BeforeAll
    static void serve() {
        served = new Served();
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @Test
    void aChangeIsShownBesideHowItWas() {
        String page = served.get("/swap?box=curlew-early&set=SM-1154&place=third&cruise=100")
                .body();

        assertTrue(page.contains("<tr class=\"meant\"><th scope=\"row\">ratio</th><td>1.800</td><td>1.649</td>"), page);
        assertTrue(page.contains("The interlock keeps apart what it kept apart."), page);
        assertTrue(page.contains("href=\"/fit?set=SM-1154"), page);
        assertTrue(page.contains("the engine speed to shift at is missing"), page);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /fit?set=SM-1150&box=curlew-early&place=third        | 3.7795 in
            /swap?box=curlew&cruise=100&torque=150               | mph at 1000 rpm
            /swap?box=curlew&cruise=100&torque=150               | torque at the wheels, lb·ft
            /identify?teeth=34&tip=96.9&helix=22&span=5+34.9     | 3.8150 in measured
            /wish?box=curlew-early&wish=nearer&gear=3&other=2    | <td>3.7795 in</td>
            """)
    void figuresAreInInchesWhereThatIsAsked(String path, String shown) {
        String metric = served.get(path).body();
        String inch = served.get(path + "&units=inch").body();

        assertTrue(inch.contains(shown), inch);
        assertFalse(metric.contains(shown), metric);
        assertTrue(inch.contains("name=\"units\" value=\"inch\""), inch);
        assertTrue(metric.contains("units=inch\">The same in inches"), metric);
    }

    @Test
    void unitsThatThereAreNotAreRefused() {
        assertEquals(404, served.get("/fit?set=SM-1150&units=cubit").statusCode());
    }

    @Test
    void theBenchNamesCandidatesAndResiduals() {
        String page =
                served.get("/identify?teeth=34&tip=96.9&helix=22&span=5+34.9").body();

        assertTrue(page.contains("<span class=\"rank\">1</span> 34 teeth, "), page);
        assertTrue(page.contains("the tip diameter: 96.900 mm measured, "), page);
        assertTrue(page.contains("value=\"5 34.9\""), page);
    }

    @Test
    void aShaftIsHeldAgainstItsHub() {
        String page = served.get("/identify?spline=W+30+x+2+x+14+x+8f&hub=N+30+x+2+x+14+x+9H")
                .body();

        assertTrue(page.contains("The shaft enters the hub"), page);
        assertTrue(page.contains("<th scope=\"row\">pressure angle</th>"), page);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            422 | /swap?box=curlew&tyre=round  | value="round"
            404 | /swap?box=curlw              | No box is called
            400 | /identify?teeth=many         | value="many"
            422 | /identify?spline=coarse      | value="coarse"
            """)
    void whatCannotBeUsedIsSaidAboveTheForm(int status, String path, String kept) {
        HttpResponse<String> reply = served.get(path);

        assertEquals(status, reply.statusCode());
        assertTrue(reply.body().contains("role=\"alert\""), reply::body);
        assertTrue(reply.body().contains(kept), reply::body);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            does SM-1150 fit an early Curlew as third | whether SM-1150, Curlew third pair, 37/34, fits in Curlew, first generation at third gear | /fit?set=SM-1150&amp;box=curlew-early&amp;place=third | It fits as it is
            what fits the Curlew third     | what fits in Curlew at third gear | /fit?box=curlew&amp;place=third | SM-1150
            what is SM-1152 superseded by  | what SM-1152, Curlew third pair   | /fit?set=SM-1152 | SM-1152
            what happens if I put the SM-1154 set in | what SM-1154, Curlew third pair, close ratio, 38/32, changes in Curlew | /swap?box=curlew&amp;set=SM-1154 | 3rd: a ratio of 1.649, 1.800 before
            which set brings third nearer second | which set brings 3rd nearer 2nd in Curlew | /wish?box=curlew&amp;wish=nearer&amp;gear=3&amp;other=2 | SM-1158
            I want to cruise at 2500 rpm at 90 km/h, which axle | which axle gives 2500 rpm at 90 km/h in Curlew | /wish?box=curlew&amp;wish=axle&amp;value=2500&amp;at=90 | 3.545
            which speedo gear with 3.9 axle | which speedometer gear suits an axle of 3.9 in Curlew | /wish?box=curlew&amp;wish=reading&amp;axle=3.9 | 14.27 would keep
            195/65R15 to 205/55R16, how far out is my speedo | how far out the speedometer of Curlew is with 205/55 R16 instead of 195/65 R15 | /swap?box=curlew&amp;tyre=205 | per cent too high
            """)
    void aQuestionAboutPartsIsRestatedAnsweredAndLeadsToItsPage(
            String question, String understood, String link, String says) {
        String page =
                served.get("/?layout=curlew&q=" + Served.encoded(question)).body();

        assertTrue(page.contains("Understood as</span> " + understood), page);
        assertTrue(page.contains("href=\"" + link), page);
        assertTrue(page.contains(says), page);
        assertTrue(page.contains("hold it against the maker"), page);
    }

    @Test
    void aMeasuredGearIsHandedToTheBench() {
        String page = served.get(
                        "/?layout=curlew&q=" + Served.encoded("gear with 34 teeth, tip 96.9, helix 22: which is it"))
                .body();

        assertTrue(page.contains("which gear has 34 teeth, tip diameter 96.9 mm, helix angle 22 degrees"), page);
        assertTrue(page.contains("href=\"/identify?teeth=34&amp;tip=96.9&amp;helix=22\""), page);
        assertTrue(page.contains("1. 34 teeth, "), page);
    }

    @Test
    void aNameOfSeveralSetsIsAskedBack() {
        String page = served.get("/?layout=curlew&q=" + Served.encoded("will the Lapwing fifth fit a Curlew"))
                .body();

        assertTrue(page.contains("Which is meant"), page);
        assertTrue(page.contains("whether SM-3153, Lapwing fifth pair, 36/26, fits in Curlew"), page);
    }

    @Test
    void anUnknownNumberIsAnsweredWithTheNearest() {
        String page = served.get("/?layout=curlew&q=" + Served.encoded("does SM-1159 fit the Curlew"))
                .body();

        assertTrue(page.contains("No set or part has the number"), page);
        assertTrue(page.contains("whether SM-115"), page);
    }
}
