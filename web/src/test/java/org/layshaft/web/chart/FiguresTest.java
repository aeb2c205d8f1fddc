package org.layshaft.web.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.layshaft.web.chart.LineChart.Line;
import org.layshaft.web.chart.LineChart.NameAt;
import org.layshaft.web.chart.LineChart.Point;
import org.layshaft.web.chart.LineChart.Sort;
import org.layshaft.web.chart.RatioLadder.Ladder;
import org.layshaft.web.chart.RatioLadder.Rung;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class FiguresTest {
    @Test
    void aFigureIsOnePictureWithANameAndADescription() throws Exception {
        Document figure =
                read(new RatioLadder(List.of(ladder("One", 4, 2, 1))).svg("it", "Ratios <of> one", "4, 2, 1"));

        Element svg = figure.getDocumentElement();
        assertEquals("img", svg.getAttribute("role"));
        assertEquals("it-title", svg.getAttribute("aria-labelledby"));
        assertEquals(
                "Ratios <of> one", svg.getElementsByTagName("title").item(0).getTextContent());
        assertEquals("4, 2, 1", svg.getElementsByTagName("desc").item(0).getTextContent());
        assertFalse(svg.hasAttribute("style"));
    }

    @Test
    void equalStepsAreEquallyFarApartInEveryBoxOfALadder() throws Exception {
        Document figure = read(
                new RatioLadder(List.of(ladder("One", 4, 2, 1), ladder("Other", 8, 2))).svg("it", "Two", "of both"));

        List<Double> places = places(figure);
        assertEquals(5, places.size());
        double octave = places.get(1) - places.get(0);
        assertEquals(octave, places.get(2) - places.get(1), 0.02);
        assertEquals(places.get(1), places.get(4), 0.02);
        assertEquals(2 * octave, places.get(4) - places.get(3), 0.02);
        assertTrue(octave > 0, "the higher gear stands on the right");
    }

    @Test
    void reverseIsToldApartByItsShapeAndItsName() throws Exception {
        Document figure = read(new RatioLadder(List.of(new Ladder(
                        "One",
                        List.of(new Rung("1", 3, false, "1st: 3.000"), new Rung("R", 3.1, true, "reverse: 3.100")))))
                .svg("it", "One", "both"));

        NodeList boxes = figure.getElementsByTagName("rect");
        assertEquals("#ffffff", ((Element) boxes.item(0)).getAttribute("fill"));
        assertEquals("#182129", ((Element) boxes.item(1)).getAttribute("fill"));
        assertTrue(figure.getDocumentElement().getTextContent().contains("reverse: 3.100"));
    }

    @Test
    void namesOfManyGearsDoNotRunIntoOneAnother() throws Exception {
        List<Rung> rungs = IntStream.range(0, 18)
                .mapToObj(i -> new Rung(i + " low slow", Math.pow(1.19, 17 - i), false, "gear " + i))
                .toList();
        Document figure = read(new RatioLadder(List.of(new Ladder("Many", rungs))).svg("it", "Many", "eighteen"));

        List<double[]> taken = new ArrayList<>();
        NodeList texts = figure.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            if (text.getTextContent().endsWith("slow")) {
                double x = Double.parseDouble(text.getAttribute("x"));
                double half = text.getTextContent().length() * 7.5 / 2;
                taken.add(new double[] {x - half, x + half, Double.parseDouble(text.getAttribute("y"))});
            }
        }
        assertEquals(18, taken.size());
        for (double[] one : taken) {
            for (double[] other : taken) {
                assertTrue(one == other || one[2] != other[2] || one[1] <= other[0] || other[1] <= one[0]);
            }
        }
    }

    @Test
    void linesAreToldApartByStrokeAndName() throws Exception {
        Document figure = read(new LineChart(
                        "km/h",
                        "N",
                        List.of(
                                new Line("1", Sort.GEAR, NameAt.END, points(), "1st"),
                                new Line("", Sort.SHIFT, NameAt.NOWHERE, points(), "the shift"),
                                new Line("level road", Sort.AGAINST, NameAt.END, points(), "what holds back")))
                .svg("it", "Three", "lines"));

        NodeList lines = figure.getElementsByTagName("polyline");
        assertEquals(
                3,
                IntStream.range(0, 3)
                        .mapToObj(i -> ((Element) lines.item(i)).getAttribute("stroke-dasharray"))
                        .distinct()
                        .count());
        String words = figure.getDocumentElement().getTextContent();
        assertTrue(words.contains("level road") && words.contains("km/h") && words.contains("the shift"), words);
    }

    @Test
    void namesOfManyLinesDoNotCoverOneAnother() throws Exception {
        List<Line> lines = IntStream.range(0, 20)
                .mapToObj(i -> new Line(
                        "gear " + i,
                        Sort.GEAR,
                        NameAt.END,
                        List.of(new Point(0, 0), new Point(3 * Math.pow(1.17, i), 2000)),
                        "gear " + i))
                .toList();
        Document figure = read(new LineChart("km/h", "rpm", lines).svg("it", "Many", "lines"));

        List<Double> places = new ArrayList<>();
        NodeList groups = figure.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            String moved = ((Element) groups.item(i)).getAttribute("transform");
            if (!moved.isEmpty()) {
                places.add(Double.valueOf(moved.replaceAll("translate\\(([0-9.]+) .*", "$1")));
            }
        }
        assertTrue(places.size() > 9 && places.size() < 20, places::toString);
        for (int i = 1; i < places.size(); i++) {
            assertTrue(places.get(i - 1) - places.get(i) >= 14, places::toString);
        }
    }

    @Test
    void withoutAnythingToShowThereIsNoFigure() {
        assertEquals("", new RatioLadder(List.of()).svg("it", "None", "none"));
        assertEquals("", new LineChart("km/h", "N", List.of()).svg("it", "None", "none"));
    }

    private static List<Point> points() {
        return List.of(new Point(0, 10), new Point(50, 100));
    }

    private static Ladder ladder(String name, double... ratios) {
        return new Ladder(
                name,
                IntStream.range(0, ratios.length)
                        .mapToObj(i -> new Rung(String.valueOf(i + 1), ratios[i], false, "ratio " + ratios[i]))
                        .toList());
    }

    private static List<Double> places(Document figure) {
        NodeList boxes = figure.getElementsByTagName("rect");
        return IntStream.range(0, boxes.getLength())
                .mapToObj(i -> Double.parseDouble(((Element) boxes.item(i)).getAttribute("x")))
                .toList();
    }

    private static Document read(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
