package org.layshaft.web.desk;

import java.util.List;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** What can be told of a fault. */
public final class Told {
    private Told() {}

    /**
     * The values that can be told of a fault of this part.
     *
     * @param written as the failure mode gives them: any place along a shaft becomes each item with another behind it
     */
    public static List<String> values(Layout layout, String part, List<String> written) {
        return written.contains(FailureMode.ANY_PLACE) ? placesOn(layout, part) : written;
    }

    private static List<String> placesOn(Layout layout, String part) {
        return layout.find(Shaft.class, part)
                .map(Shaft::along)
                .filter(along -> !along.isEmpty())
                .map(along -> along.subList(0, along.size() - 1))
                .orElse(List.of());
    }
}
