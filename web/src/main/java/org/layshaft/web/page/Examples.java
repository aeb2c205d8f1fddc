package org.layshaft.web.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.words.Phrase;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.asking.Understanding.Understood;
import org.layshaft.web.desk.Desk;

/** Questions to start from: of each shape the first example that is understood of the layout. Thread-safe. */
final class Examples {
    private final Desk desk;
    private final Map<String, List<Example>> byLayout = new ConcurrentHashMap<>();

    /** A question that can be asked. */
    record Example(Intent intent, String text) {}

    Examples(Desk desk) {
        this.desk = desk;
    }

    List<Example> of(Layout layout) {
        return byLayout.computeIfAbsent(
                layout.id(),
                id -> desk.knowledge().words().phrases().stream()
                        .flatMap(phrase -> first(phrase, layout).stream())
                        .toList());
    }

    private Optional<Example> first(Phrase phrase, Layout layout) {
        return phrase.examples().stream()
                .flatMap(example -> understood(example, layout).stream())
                .findFirst();
    }

    private Optional<Example> understood(String example, Layout layout) {
        return desk.understand(Optional.of(layout), example) instanceof Understood understood
                        && understood.reading().question().layout().equals(layout.id())
                ? Optional.of(new Example(Intent.of(understood.reading().question()), example))
                : Optional.empty();
    }
}
