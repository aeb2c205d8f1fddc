package org.layshaft.web.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.gallery.Likeness;
import org.layshaft.web.gallery.Property;
import org.layshaft.web.gallery.SideBySide;
import org.layshaft.web.gallery.SideBySide.GearPair;
import org.layshaft.web.gallery.SideBySide.SharedPart;
import org.layshaft.web.page.CompareView.BothView;
import org.layshaft.web.page.CompareView.ChoiceView;
import org.layshaft.web.page.CompareView.DiffersView;
import org.layshaft.web.page.CompareView.PartView;
import org.layshaft.web.page.CompareView.RowView;

/** The page of two boxes side by side. Thread-safe. */
public final class ComparePage {
    private static final String PATH = "/compare";
    private static final String NONE = "–";

    private final Desk desk;
    private final Templates templates;

    ComparePage(Desk desk, Templates templates) {
        this.desk = desk;
        this.templates = templates;
    }

    /**
     * Throws {@link org.layshaft.web.desk.BadInputException} where there is no such layout.
     *
     * @param one id of the first; empty for the first of all
     * @param other id of the second; empty where it is yet to be chosen
     */
    public String page(Optional<String> one, Optional<String> other) {
        Layout first = one.map(desk::layout)
                .orElseGet(() -> desk.knowledge().layouts().values().iterator().next());
        Optional<Layout> second = other.map(desk::layout);
        return templates.fill(
                "compare",
                new CompareView(
                        desk.knowledge().layouts().values().stream()
                                .map(layout -> new PageView.LayoutView(
                                        layout.name(),
                                        layout.summary(),
                                        link(layout.id(), other),
                                        layout.equals(first)))
                                .toList(),
                        first.id(),
                        first.name(),
                        desk.knowledge().layouts().values().stream()
                                .filter(layout -> !layout.equals(first))
                                .map(layout ->
                                        new ChoiceView(layout.id(), layout.name(), second.equals(Optional.of(layout))))
                                .toList(),
                        second.map(layout -> both(first, layout)).orElse(null)));
    }

    private static String link(String one, Optional<String> other) {
        return PATH + new Query().with("layout", one).with("with", other);
    }

    private BothView both(Layout one, Layout other) {
        SideBySide both = SideBySide.of(
                Likeness.of(desk.box(one)),
                Likeness.of(desk.box(other)),
                desk.knowledge().catalogue());
        return new BothView(
                one.name(),
                other.name(),
                "/box" + new Query().with("layout", one.id()),
                "/box" + new Query().with("layout", other.id()),
                link(other.id(), Optional.of(one.id())),
                both.gears().stream().map(ComparePage::row).toList(),
                SideBySide.spread(both.one().box()).map(Decimals::three).orElse(NONE),
                SideBySide.spread(both.other().box()).map(Decimals::three).orElse(NONE),
                LadderFigure.of(both.one().box(), both.other().box()),
                both.structure().stream()
                        .map(each -> new DiffersView(each.what(), each.one(), each.other()))
                        .toList(),
                both.alike().isEmpty()
                        ? null
                        : both.alike().stream().map(Property::says).collect(Collectors.joining(", ")),
                both.sharedParts().value().orElse(List.of()).stream()
                        .map(part -> part(part, one, other))
                        .toList(),
                both.sharedParts().whyNot().orElse(null),
                "/api/compare" + new Query().with("layout", one.id()).with("with", other.id()));
    }

    private static RowView row(GearPair pair) {
        return new RowView(
                pair.gear(),
                pair.one().map(gear -> NumberView.of(gear.ratio())).orElse(null),
                pair.other().map(gear -> NumberView.of(gear.ratio())).orElse(null),
                pair.change().map(ComparePage::percent).orElse(NONE),
                pair.one().flatMap(SideBySide.Geared::step).map(Decimals::three).orElse(NONE),
                pair.other()
                        .flatMap(SideBySide.Geared::step)
                        .map(Decimals::three)
                        .orElse(NONE));
    }

    private static String percent(Fraction change) {
        if (change.isZero()) {
            return "the same";
        }
        return String.format(
                Locale.ROOT, "%.1f %% %s", 100 * change.absolute().toDouble(), change.signum() > 0 ? "more" : "less");
    }

    private PartView part(SharedPart part, Layout one, Layout other) {
        return new PartView(
                part.number(),
                FitAddress.link(FitRequest.of(part.number())),
                part.name(),
                places(part.inOne(), desk.names(one)),
                places(part.inOther(), desk.names(other)));
    }

    private static String places(Set<String> places, Names names) {
        return places.stream().map(names::of).collect(Collectors.joining(", "));
    }
}
