package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How the box is looked at, and what can be told for that.
 *
 * @param from where it can be seen from
 * @param words whose words parts can be called by
 * @param carried what the form with speed and torque carries along
 */
record SightView(List<LinkView> from, List<LinkView> words, String rpm, String nm, List<FieldView> carried) {
    static SightView of(Scene scene) {
        Address address = scene.address();
        Sight sight = address.sight();
        return new SightView(
                List.of(
                        view(address, "from the side", Optional.empty()),
                        view(address, "along the shafts", Optional.of("end"))),
                List.of(
                        words(address, "as the layout has them", Optional.empty()),
                        words(address, "British", Optional.of("uk")),
                        words(address, "American", Optional.of("us"))),
                sight.rpm().orElse(""),
                sight.nm().orElse(""),
                Stream.of(
                                address.withoutSight(),
                                sight.carried(),
                                sight.words().map(each -> new FieldView("words", each)).stream()
                                        .toList())
                        .flatMap(List::stream)
                        .toList());
    }

    private static LinkView view(Address address, String text, Optional<String> view) {
        Sight sight = address.sight();
        return new LinkView(
                text,
                address.drawn(sight.from(view)).link() + "#sheet",
                sight.view().equals(view));
    }

    private static LinkView words(Address address, String text, Optional<String> words) {
        Sight sight = address.sight();
        return new LinkView(
                text,
                address.drawn(sight.saying(words)).link() + "#sheet",
                sight.words().equals(words));
    }
}
