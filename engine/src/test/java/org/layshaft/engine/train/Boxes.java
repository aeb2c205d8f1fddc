package org.layshaft.engine.train;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;

/** Layouts to try things on: the boxes of Saltmarsh, read once, and those typed for the tests. */
public final class Boxes {
    private static final Reading READING = PackReader.read(PackSource.onClassPath());

    private Boxes() {}

    public static List<Layout> all() {
        return List.of(the("curlew"), the("plover"), the("avocet"));
    }

    /** Whatever Saltmarsh has: boxes, transfer boxes, axles. */
    public static List<Layout> every() {
        return List.copyOf(READING.knowledge().layouts().values());
    }

    /** All that the packs on the class path tell. */
    public static KnowledgeBase knowledge() {
        return READING.knowledge();
    }

    public static Layout the(String id) {
        return READING.knowledge()
                .layout(id)
                .orElseThrow(() -> new IllegalStateException("no layout '%s': %s".formatted(id, READING.findings())));
    }

    /** The layout of this id in a file of its name among the resources of the tests. */
    public static Layout typed(String folder, String id) {
        Reading reading = PackReader.check(List.of(resource("/" + folder + "/" + id + ".json")));
        return reading.knowledge()
                .layout(id)
                .orElseThrow(() -> new IllegalStateException(reading.findings().toString()));
    }

    private static Path resource(String name) {
        try {
            return Path.of(Boxes.class.getResource(name).toURI());
        } catch (URISyntaxException unusual) {
            throw new IllegalStateException(name, unusual);
        }
    }
}
