package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is looked for among all layouts, as an address.
 *
 * @param where in words
 * @param has properties that were chosen
 * @param speeds number of forward gears
 * @param layout the one that was looked at before
 */
public record GalleryRequest(
        Optional<String> where, List<String> has, Optional<String> speeds, Optional<String> layout) {
    public GalleryRequest {
        has = List.copyOf(has);
    }

    GalleryRequest with(String property) {
        List<String> more = new ArrayList<>(has);
        more.add(property);
        return new GalleryRequest(where, more, speeds, layout);
    }

    GalleryRequest without(String property) {
        return new GalleryRequest(
                where,
                has.stream().filter(each -> !each.equalsIgnoreCase(property)).toList(),
                speeds,
                layout);
    }

    GalleryRequest ofSpeeds(Optional<String> other) {
        return new GalleryRequest(where, has, other, layout);
    }

    String link() {
        return "/layouts" + query().with("layout", layout);
    }

    String api() {
        return "/api/gallery" + query();
    }

    private Query query() {
        return new Query().with("where", where).with("has", has).with("speeds", speeds);
    }
}
