package org.layshaft.web.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.words.Phrase;
import org.layshaft.web.asking.Understanding.Understood;
import org.layshaft.web.desk.Desk;

/** Questions to start from: of each shape the first example that is understood of the layout. Thread-safe. */
final class Examples {
    private final Desk desk;
    private final Map<String, List<String>> byLayout = new ConcurrentHashMap<>();

    Examples(Desk desk) {
        this.desk = desk;
    }

    List<String> of(Layout layout) {
        return byLayout.computeIfAbsent(
                layout.id(),
                id -> desk.knowledge().words().phrases().stream()
                        .flatMap(phrase -> first(phrase, layout).stream())
                        .toList());
    }

    private Optional<String> first(Phrase phrase, Layout layout) {
        return phrase.examples().stream()
                .filter(example -> desk.understand(Optional.of(layout), example) instanceof Understood understood
                        && understood.reading().question().layout().equals(layout.id()))
                .findFirst();
    }
}
