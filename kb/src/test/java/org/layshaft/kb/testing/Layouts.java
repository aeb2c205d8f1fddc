package org.layshaft.kb.testing;

import java.nio.charset.StandardCharsets;
import org.layshaft.kb.json.Document;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.parts.LayoutBuilder;
import org.layshaft.kb.typed.LayoutReading;
import org.layshaft.kb.typed.TypedLayout;

/** Layouts from a few lines of text, sound or not: nothing is checked. */
public final class Layouts {
    private Layouts() {}

    /** @param keys what stands between the outer braces of the file */
    public static TypedLayout typed(String keys) {
        Document document = DocumentReader.read(
                        "box.json", "{ %s }".formatted(keys).getBytes(StandardCharsets.UTF_8))
                .document()
                .orElseThrow();
        return LayoutReading.of(document.item());
    }

    /** @param keys what stands between the outer braces of the file */
    public static Layout built(String keys) {
        return LayoutBuilder.build(typed(keys)).layout();
    }
}
