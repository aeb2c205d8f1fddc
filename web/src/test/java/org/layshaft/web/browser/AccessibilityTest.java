package org.layshaft.web.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Dimension;

/** The page as a checker of accessibility sees it, in light and dark, wide and narrow. */
class AccessibilityTest {
    private static final String UNFOLD_SOME =
            "document.querySelectorAll('.examples, .parts, .failures details, tr:nth-child(3) .why')"
                    + ".forEach(each => each.open = true)";
    private static final String TOO_WIDE = "const wide = document.documentElement.clientWidth;"
            + " return [...document.querySelectorAll('body *')]"
            + ".filter(each => each.getBoundingClientRect().right > wide + 1 && !each.closest('.canvas, .wide'))"
            + ".map(each => each.tagName + '.' + each.className + ' ' + each.textContent.slice(0, 40))";

    private static Visit visit;

    @BeforeAll
    static void open() {
        visit = new Visit(Chromium.start());
    }

    @AfterAll
    static void close() {
        if (visit != null) {
            visit.close();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "bent, /?layout=curlew&fault=3-4-fork+bent&gear=3&part=3-4-fork, light, 1400",
        "bent, /?layout=curlew&fault=3-4-fork+bent&gear=3&part=3-4-fork, dark, 1400",
        "broken, /?layout=plover&fault=left-half-shaft+broken&gear=R, dark, 500",
        "by-hand, /?layout=curlew&sleeve=1-2:front&sleeve=3-4:rear&words=uk, light, 1400",
        "by-hand, /?layout=curlew&sleeve=1-2:front&sleeve=3-4:rear&words=uk, dark, 500",
        "along, /?layout=greenshank&gear=low+open&view=end&rpm=1500&nm=200, light, 1400",
        "along, /?layout=greenshank&gear=low+open&view=end, dark, 500",
        "suspects, /suspects?layout=curlew&seen=4:+whines&words=grumps, light, 1400",
        "suspects, /suspects?layout=curlew&seen=4:+whines, dark, 500",
        "puzzled, /?layout=avocet&q=fish+and+chips, light, 1400",
        "listening, /sound?layout=curlew&gear=3&rpm=2400&hz=756, light, 1400",
        "listening, /sound?layout=heron&gear=1+low+slow&rpm=1200&hz=30, dark, 500",
        "fitting, /fit?set=SM-1152&box=curlew-early&place=third, light, 1400",
        "fitting, /fit?set=SM-1152&box=curlew-early&place=third, dark, 500",
        "choosing, /fit?set=SM-1, light, 1400",
        "crossed, /cross?box=curlew&shape=pair, light, 1400",
        "crossed, /cross?shape=train, dark, 500",
        "swapped, /swap?box=curlew-early&set=SM-1154&place=third&cruise=100, light, 1400",
        "swapped, /swap?box=curlew&tyre=205/55+R16, dark, 500",
        "wished, /wish?box=curlew-early&wish=nearer&gear=3&other=2, light, 1400",
        "wished, /wish?box=curlew-early&wish=nearer&gear=3&other=2, dark, 500",
        "wished-axle, /wish?box=curlew&wish=axle&value=2500&at=90, dark, 1400",
        "wished-reading, /wish?box=curlew-early&wish=reading&axle=3.9, light, 500",
        "benched, /identify?teeth=34&tip=96.9&helix=22&span=5+34.9, light, 1400",
        "benched, /identify?spline=W+30+x+2+x+14+x+8f&hub=N+30+x+2+x+14+x+9H, dark, 500",
        "boards, /board, light, 1400",
        "drafting, /board?from=curlew, light, 1400",
        "drafting, /board?start=phalarope, dark, 500",
        "explained, /fit/check/normal-module, light, 1400",
        "driven, /road?layout=curlew&at=60, light, 1400",
        "driven, /road?layout=heron&units=us, dark, 500",
        "misdriven, /road?layout=avocet&mass=heavy, dark, 1400",
        "all, /layouts?layout=curlew&where=five-speed+in+pink&has=overdrive, light, 1400",
        "all, /layouts, dark, 500",
        "glance, /box?layout=curlew, light, 1400",
        "glance, /box?layout=crane, dark, 500",
        "beside, /compare?layout=curlew&with=redshank, light, 1400",
        "beside, /compare?layout=heron&with=knot, dark, 500",
        "choice, /compare?layout=curlew, light, 500",
        "refused, /?layout=dunlin, light, 1400"
    })
    void nothingStandsInAnybodysWay(String name, String path, String scheme, int width) {
        visit.driver().manage().window().setSize(new Dimension(width, 1000));
        visit.scheme(scheme);
        visit.go(path);
        visit.driver().executeScript(UNFOLD_SOME);
        visit.screenshot("axe-%s-%s-%d".formatted(name, scheme, width));

        List<Rule> violations = new AxeBuilder()
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                .analyze(visit.driver())
                .getViolations();
        assertEquals(List.of(), violations.stream().map(AccessibilityTest::said).toList());
    }

    @ParameterizedTest
    @CsvSource({
        "page, /?layout=curlew&fault=3-4-fork+bent&gear=3&part=3-4-fork, 360",
        "page, /?layout=curlew&fault=3-4-fork+bent&gear=3&part=3-4-fork, 768",
        "page, /?layout=curlew&fault=3-4-fork+bent&gear=3&part=3-4-fork, 1920",
        "along, /?layout=heron&sleeve=none&view=end, 360",
        "fit, /fit?set=SM-1152&box=curlew-early&place=third, 360",
        "cross, /cross, 360",
        "swap, /swap?box=curlew&tyre=205/55+R16, 360",
        "wish, /wish?box=curlew-early&wish=nearer&gear=3&other=2, 360",
        "wish-reading, /wish?box=curlew-early&wish=reading&axle=3.9, 360",
        "bench, /identify?teeth=34&tip=96.9&helix=22&span=5+34.9, 360",
        "board, /board?from=curlew, 360",
        "board, /board?from=curlew, 1920",
        "sound, /sound?layout=curlew&gear=3&rpm=2400&hz=756, 360",
        "road, /road?layout=curlew&at=60, 360",
        "road, /road?layout=curlew&at=60, 1920",
        "layouts, /layouts?layout=curlew&where=five-speed, 360",
        "layouts, /layouts, 1920",
        "box, /box?layout=heron, 360",
        "compare, /compare?layout=curlew&with=redshank, 360",
        "suspects, /suspects?layout=curlew&seen=4:+whines, 360",
        "sound, /sound?layout=curlew&gear=3&rpm=2400&hz=756, 1920"
    })
    void nothingIsWiderThanTheWindow(String name, String path, int width) {
        visit.driver()
                .executeCdpCommand(
                        "Emulation.setDeviceMetricsOverride",
                        Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
        visit.go(path);
        visit.screenshot("width-%s-%d".formatted(name, width));

        Object tooWide = visit.driver().executeScript(TOO_WIDE);
        visit.driver().executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
        assertEquals(List.of(), tooWide);
    }

    private static String said(Rule rule) {
        return rule.getId() + ": "
                + rule.getNodes().stream()
                        .map(node -> node.getTarget() + " " + node.getFailureSummary())
                        .toList();
    }
}
