package org.layshaft.web.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A drawing read back as XML, which it has to be. */
record Picture(Element root) {

    static Picture of(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return new Picture(factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement());
        } catch (Exception notXml) {
            throw new AssertionError("This is no XML: " + svg, notXml);
        }
    }

    Stream<Element> all() {
        List<Element> elements = new ArrayList<>(List.of(root));
        NodeList nodes = root.getElementsByTagName("*");
        for (int at = 0; at < nodes.getLength(); at++) {
            elements.add((Element) nodes.item(at));
        }
        return elements.stream();
    }

    Stream<Element> all(Predicate<Element> wanted) {
        return all().filter(wanted);
    }

    List<String> values(String attribute) {
        return all(element -> element.hasAttribute(attribute))
                .map(element -> element.getAttribute(attribute))
                .toList();
    }

    Element part(String id) {
        return all(element -> element.getAttribute("data-part").equals(id))
                .findFirst()
                .orElseThrow();
    }

    List<String> classes(String part) {
        return List.of(part(part).getAttribute("class").split(" "));
    }

    Stream<Element> ofClass(String name) {
        return all(element -> List.of(element.getAttribute("class").split(" ")).contains(name));
    }

    static Element first(Element of, String tag) {
        return (Element) of.getElementsByTagName(tag).item(0);
    }
}
