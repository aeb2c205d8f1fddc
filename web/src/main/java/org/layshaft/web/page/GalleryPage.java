package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.gallery.Gallery;
import org.layshaft.web.gallery.Gallery.Found;
import org.layshaft.web.gallery.Likeness;
import org.layshaft.web.gallery.Property;
import org.layshaft.web.gallery.Wanted.Term;
import org.layshaft.web.page.GalleryView.CardView;
import org.layshaft.web.page.GalleryView.ChoiceView;
import org.layshaft.web.page.GalleryView.FacetView;
import org.layshaft.web.page.GalleryView.PairView;

/** The page of all layouts, and of those that are like what is looked for. Thread-safe. */
public final class GalleryPage {
    private final Gallery gallery;
    private final Templates templates;

    GalleryPage(Desk desk, Templates templates) {
        this.gallery = new Gallery(desk.knowledge(), desk::box);
        this.templates = templates;
    }

    /** The page; what cannot be used is said on it, above all layouts. */
    public Answered answer(GalleryRequest request) {
        try {
            Found found = gallery.find(request.where(), request.has(), request.speeds());
            return Answered.with(templates.fill("gallery", view(request, found, List.of())));
        } catch (BadInputException problem) {
            GalleryRequest bare = new GalleryRequest(Optional.empty(), List.of(), Optional.empty(), request.layout());
            Found all = gallery.find(bare.where(), bare.has(), bare.speeds());
            return new Answered(
                    Optional.of(problem),
                    templates.fill(
                            "gallery",
                            view(bare, all, problem.getMessage().lines().toList())));
        }
    }

    private static GalleryView view(GalleryRequest request, Found found, List<String> trouble) {
        return new GalleryView(
                request.layout().orElse(null),
                request.where().orElse(""),
                trouble,
                kept(request),
                found.wanted().terms().stream().map(Term::says).toList(),
                chosen(request, found),
                found.wanted().leftOver().isEmpty()
                        ? null
                        : String.join(", ", found.wanted().leftOver()),
                count(found),
                facets(request, found),
                found.found().stream().map(each -> card(each, request)).toList(),
                request.where().isPresent()
                        || !request.has().isEmpty()
                        || request.speeds().isPresent(),
                new GalleryRequest(Optional.empty(), List.of(), Optional.empty(), request.layout()).link(),
                request.api());
    }

    private static List<PairView> kept(GalleryRequest request) {
        List<PairView> kept = new ArrayList<>();
        request.has().forEach(property -> kept.add(new PairView("has", property)));
        request.speeds().ifPresent(speeds -> kept.add(new PairView("speeds", speeds)));
        request.layout().ifPresent(layout -> kept.add(new PairView("layout", layout)));
        return kept;
    }

    private static List<LinkView> chosen(GalleryRequest request, Found found) {
        List<LinkView> chosen = new ArrayList<>();
        found.chosen()
                .forEach(property -> chosen.add(new LinkView(
                        property.says(), request.without(property.word()).link(), true)));
        found.speeds()
                .ifPresent(speeds -> chosen.add(new LinkView(
                        speeds(speeds), request.ofSpeeds(Optional.empty()).link(), true)));
        return chosen;
    }

    private static String count(Found found) {
        int shown = found.found().size();
        int all = found.all().size();
        if (shown == all) {
            return "All %d layouts.".formatted(all);
        }
        return shown == 0
                ? "None of the %d layouts is like that. Take something out to see more.".formatted(all)
                : "%d of %d layouts.".formatted(shown, all);
    }

    private static List<FacetView> facets(GalleryRequest request, Found found) {
        List<FacetView> facets = new ArrayList<>();
        for (Property.Facet facet : Property.Facet.values()) {
            facets.add(new FacetView(
                    facet.title(),
                    Arrays.stream(Property.values())
                            .filter(property -> property.facet() == facet)
                            .map(property -> choice(property, request, found))
                            .filter(choice -> choice.count() > 0 || choice.current())
                            .toList()));
        }
        facets.add(
                1,
                new FacetView(
                        "Speeds",
                        found.bySpeeds().entrySet().stream()
                                .map(each -> new ChoiceView(
                                        speeds(each.getKey()),
                                        each.getValue(),
                                        request.ofSpeeds(
                                                        found.speeds().equals(Optional.of(each.getKey()))
                                                                ? Optional.empty()
                                                                : Optional.of(String.valueOf(each.getKey())))
                                                .link(),
                                        found.speeds().equals(Optional.of(each.getKey()))))
                                .toList()));
        return facets.stream().filter(facet -> !facet.choices().isEmpty()).toList();
    }

    private static ChoiceView choice(Property property, GalleryRequest request, Found found) {
        boolean current = found.chosen().contains(property);
        return new ChoiceView(
                property.says(),
                found.with(property),
                (current ? request.without(property.word()) : request.with(property.word())).link(),
                current);
    }

    private static CardView card(Likeness each, GalleryRequest request) {
        String id = each.layout().id();
        String query = new Query().with("layout", id).toString();
        boolean current = request.layout().filter(id::equalsIgnoreCase).isPresent();
        List<LinkView> doors = new ArrayList<>(
                List.of(new LinkView("Ask", "/" + query, false), new LinkView("Suspects", "/suspects" + query, false)));
        request.layout()
                .filter(other -> !current)
                .ifPresent(other -> doors.add(new LinkView(
                        "Beside " + other,
                        "/compare" + new Query().with("layout", other).with("with", id),
                        false)));
        return new CardView(
                each.layout().name(),
                each.layout().summary(),
                facts(each),
                "/drawing/" + id + ".svg",
                "/box" + query,
                doors,
                current);
    }

    /** {@code transaxle, 5 forward speeds, 2 shafts, reverse by a sliding idler}. */
    static String facts(Likeness each) {
        List<String> facts = new ArrayList<>(List.of(each.family().says(), speeds(each.forward())));
        facts.add(each.shafts() == 1 ? "1 shaft" : each.shafts() + " shafts");
        facts.add(each.reverseBy().says());
        return String.join(", ", facts);
    }

    private static String speeds(int forward) {
        return forward == 1 ? "1 forward speed" : forward + " forward speeds";
    }
}
