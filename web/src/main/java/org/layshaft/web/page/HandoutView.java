package org.layshaft.web.page;

import java.util.Optional;

/**
 * The drawing as files for a handout.
 *
 * @param svg in colours
 * @param black in black and white
 * @param file what they are called, without ending
 */
record HandoutView(String svg, String black, String file) {
    static HandoutView of(Scene scene) {
        Address address = scene.address();
        String view = address.sight().view().map(each -> "-" + each).orElse("");
        String gear = scene.gear().map(each -> "-" + each.gear()).orElse("").replaceAll("[^\\w-]+", "-");
        return new HandoutView(
                address.drawn(address.sight().in(Optional.empty())).file(),
                address.drawn(address.sight().in(Optional.of("black"))).file(),
                scene.layout().id() + gear + view);
    }
}
