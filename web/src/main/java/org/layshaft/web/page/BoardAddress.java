package org.layshaft.web.page;

import java.util.Optional;
import org.layshaft.kb.keeping.Place;

/** Where a layout that is kept is opened: {@code own/mine}, and {@code own/mine/draft} for a draft. */
final class BoardAddress {
    static final String PATH = "/board";
    private static final String DRAFT = "draft";

    private BoardAddress() {}

    static String written(Place place) {
        return "%s/%s%s".formatted(place.pack(), place.layout(), place.draft() ? "/" + DRAFT : "");
    }

    /** Empty where it is not written so; throws {@link org.layshaft.kb.keeping.ShelfException} where a name cannot be one. */
    static Optional<Place> read(String written) {
        String[] steps = written.split("/", -1);
        boolean draft = steps.length == 3 && steps[2].equals(DRAFT);
        return steps.length == 2 || draft ? Optional.of(new Place(steps[0], steps[1], draft)) : Optional.empty();
    }

    static String opening(Place place) {
        return PATH + "?open=" + written(place);
    }

    static String opening(Place place, String version) {
        return opening(place) + "&at=" + version;
    }
}
