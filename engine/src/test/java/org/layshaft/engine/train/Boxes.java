package org.layshaft.engine.train;

import java.util.List;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.PackSource;
import org.layshaft.kb.pack.Reading;

/** The boxes of Saltmarsh, read once. */
public final class Boxes {
    private static final Reading READING = PackReader.read(PackSource.onClassPath());

    private Boxes() {}

    public static List<Layout> all() {
        return List.of(the("curlew"), the("plover"), the("avocet"));
    }

    public static Layout the(String id) {
        return READING.knowledge()
                .layout(id)
                .orElseThrow(() -> new IllegalStateException("no layout '%s': %s".formatted(id, READING.findings())));
    }
}
