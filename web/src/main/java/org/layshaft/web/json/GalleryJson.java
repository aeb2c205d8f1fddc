package org.layshaft.web.json;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.web.gallery.Gallery.Found;
import org.layshaft.web.gallery.Likeness;
import org.layshaft.web.gallery.Property;
import org.layshaft.web.gallery.Wanted.Term;

/**
 * Layouts by what they are like.
 *
 * @param understood what must hold, as the words were understood and as was chosen
 * @param notUnderstood words that mean nothing here, and were passed over
 * @param outOf how many layouts there are
 */
public record GalleryJson(
        List<String> understood, List<String> notUnderstood, int outOf, List<LayoutLikeJson> layouts) {

    /**
     * One layout.
     *
     * @param shafts that turn in their places
     * @param properties what holds of it, by the words that choose them
     */
    public record LayoutLikeJson(
            String id,
            String name,
            String summary,
            String family,
            int forward,
            int reverse,
            String reverseBy,
            int shafts,
            List<String> properties) {}

    public static GalleryJson of(Found found) {
        return new GalleryJson(
                understood(found),
                found.wanted().leftOver(),
                found.all().size(),
                found.found().stream().map(GalleryJson::layout).toList());
    }

    private static List<String> understood(Found found) {
        List<String> all =
                new ArrayList<>(found.wanted().terms().stream().map(Term::says).toList());
        found.chosen().stream().map(Property::says).forEach(all::add);
        found.speeds().ifPresent(speeds -> all.add(speeds + " forward speeds"));
        return List.copyOf(all);
    }

    static LayoutLikeJson layout(Likeness each) {
        return new LayoutLikeJson(
                each.layout().id(),
                each.layout().name(),
                each.layout().summary(),
                each.family().says(),
                each.forward(),
                each.reverse(),
                each.reverseBy().says(),
                each.shafts(),
                Property.of(each).stream().map(Property::word).toList());
    }
}
