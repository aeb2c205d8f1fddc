package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Box.DerivedGear;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Sounds;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.RoadAnswer;
import org.layshaft.web.desk.RoadDesk;
import org.layshaft.web.desk.RoadRequest;
import org.layshaft.web.desk.SoundDesk;
import org.layshaft.web.desk.SoundRequest;
import org.layshaft.web.gallery.Likeness;
import org.layshaft.web.gallery.Shared;
import org.layshaft.web.gallery.SideBySide;
import org.layshaft.web.page.GlanceView.GearView;
import org.layshaft.web.page.GlanceView.SharedView;

/** The page of a box at a glance. Thread-safe. */
public final class GlancePage {
    private static final String NONE = "–";
    /** Of what is missing for sounds, more is counted and not listed. */
    private static final int MOST_MISSING = 4;

    private final Desk desk;
    private final RoadDesk road;
    private final SoundDesk sounds;
    private final Templates templates;

    GlancePage(Desk desk, Templates templates) {
        this.desk = desk;
        this.road = new RoadDesk(desk);
        this.sounds = new SoundDesk(desk);
        this.templates = templates;
    }

    /** Throws {@link org.layshaft.web.desk.BadInputException} where there is no such layout. */
    public String page(Optional<String> id) {
        Layout layout = id.map(desk::layout)
                .orElseGet(() -> desk.knowledge().layouts().values().iterator().next());
        Box box = desk.box(layout);
        Mechanism mechanism = new Mechanism(box, desk.names(layout));
        return templates.fill(
                "glance",
                new GlanceView(
                        layouts(layout),
                        layout.id(),
                        layout.name(),
                        layout.summary(),
                        GalleryPage.facts(Likeness.of(box)),
                        "/drawing/" + layout.id() + ".svg",
                        says(box),
                        doors(layout),
                        LadderFigure.of(box),
                        gears(box),
                        shared(box),
                        mechanism.says(),
                        mechanism.rails(),
                        mechanism.pairs(
                                desk.gearsLeft(layout, List.of()).whatIf().conflicts()),
                        untold(box),
                        "/api/layouts/" + layout.id()));
    }

    private List<PageView.LayoutView> layouts(Layout current) {
        return desk.knowledge().layouts().values().stream()
                .map(layout -> new PageView.LayoutView(
                        layout.name(),
                        layout.summary(),
                        "/box" + new Query().with("layout", layout.id()),
                        layout.equals(current)))
                .toList();
    }

    private List<LinkView> doors(Layout layout) {
        Query query = new Query().with("layout", layout.id());
        List<LinkView> doors = new ArrayList<>(List.of(
                new LinkView("Ask what works", "/" + query, false),
                new LinkView("Tell what is noticed", "/suspects" + query, false),
                new LinkView("On the road", "/road" + query, false),
                new LinkView("Hold another beside it", "/compare" + query, false)));
        if (isBuilt(layout)) {
            doors.add(new LinkView("What fits it", "/fit" + new Query().with("box", layout.id()), false));
        }
        return doors;
    }

    private boolean isBuilt(Layout layout) {
        return desk.knowledge().catalogue().builds().values().stream()
                .anyMatch(build -> build.layout().equals(layout.id()));
    }

    private static List<String> says(Box box) {
        List<String> says = new ArrayList<>();
        SideBySide.spread(box)
                .ifPresent(spread -> says.add("From the lowest to the highest forward gear its ratios span %s to 1."
                        .formatted(Decimals.three(spread))));
        box.differences().stream().map(Box.Difference::says).forEach(says::add);
        int printed = box.layout().printedRatios().size();
        if (printed > 0 && box.differences().isEmpty()) {
            says.add(
                    printed == 1
                            ? "The ratio printed for it agrees with what is derived."
                            : "The %d ratios printed for it agree with what is derived.".formatted(printed));
        }
        return says;
    }

    private List<GearView> gears(Box box) {
        Names names = desk.names(box.layout());
        List<DerivedGear> gears = box.gears();
        List<GearView> views = new ArrayList<>();
        for (int i = 0; i < gears.size(); i++) {
            DerivedGear gear = gears.get(i);
            Optional<Fraction> step = SideBySide.step(gears, i);
            views.add(new GearView(
                    gear.name(),
                    Address.of(box.layout().id()).inGear(gear.name()).link(),
                    NumberView.of(gear.ratio()),
                    step.map(Decimals::three).orElse(NONE),
                    step.map(GlancePage::drop).orElse(NONE),
                    engaged(gear, names),
                    pairs(gear, box.layout())));
        }
        return views;
    }

    private static String drop(Fraction step) {
        return String.format(
                Locale.ROOT, "%.0f %%", 100 * Fraction.ONE.minus(step.inverse()).toDouble());
    }

    private static String engaged(DerivedGear gear, Names names) {
        return gear.pushes().isEmpty()
                ? "nothing to engage"
                : gear.pushes().stream()
                        .map(push -> "%s to the %s"
                                .formatted(names.of(push.member()), push.side().word()))
                        .collect(Collectors.joining(", "));
    }

    /** Driving over driven teeth, in the order in which the power goes through. */
    private static String pairs(DerivedGear gear, Layout layout) {
        List<String> way = gear.path().stream().map(PathStep::part).toList();
        List<String> pairs = layout.everyMesh()
                .filter(mesh -> gear.motion().carrying().contains(mesh.first())
                        && gear.motion().carrying().contains(mesh.second()))
                .sorted(Comparator.comparingInt(
                        mesh -> Math.max(way.indexOf(mesh.first()), way.indexOf(mesh.second()))))
                .map(mesh -> teeth(mesh, way, layout))
                .distinct()
                .toList();
        return pairs.isEmpty() ? "straight through" : String.join(", ", pairs);
    }

    private static String teeth(Mesh mesh, List<String> way, Layout layout) {
        boolean asWritten = way.indexOf(mesh.first()) <= way.indexOf(mesh.second());
        String driving = asWritten ? mesh.first() : mesh.second();
        return layout.gear(driving).teeth() + "/"
                + layout.gear(mesh.other(driving)).teeth();
    }

    private List<SharedView> shared(Box box) {
        Names names = desk.names(box.layout());
        return Shared.in(box).stream()
                .map(each -> new SharedView(
                        names.of(each.part()),
                        Address.of(box.layout().id()).at(each.part()).link(),
                        each.gears().size() == box.gears().size()
                                ? "every gear"
                                : Names.joined(each.gears().stream()
                                        .map(Names::gearName)
                                        .toList())))
                .toList();
    }

    private List<String> untold(Box box) {
        Layout layout = box.layout();
        List<String> untold = new ArrayList<>();
        if (layout.printedRatios().isEmpty()) {
            untold.add("No printed ratios are stated for it, so there was nothing to hold the derived ones against.");
        }
        RoadAnswer onRoad = road.drive(RoadRequest.of(Optional.of(layout.id())));
        List<String> missing = Stream.of(onRoad.teeth(), onRoad.pulls(), onRoad.against())
                .flatMap(telling -> telling.because().stream())
                .distinct()
                .toList();
        if (!missing.isEmpty()) {
            untold.add("What it does on the road cannot be told whole: %s.".formatted(String.join(", ", missing)));
        }
        if (!isBuilt(layout)) {
            untold.add("Which parts stand in it cannot be told: the catalogue tells of no box of it.");
        }
        untold.addAll(ofSound(box));
        return untold;
    }

    private List<String> ofSound(Box box) {
        if (box.gears().isEmpty()) {
            return List.of();
        }
        Sounds heard = sounds.listen(
                        SoundRequest.of(box.layout().id(), box.gears().get(0).name()))
                .sounds();
        return heard.untold().size() > MOST_MISSING
                ? List.of("Of its sounds %d things cannot be told; the page of what sounds names each."
                        .formatted(heard.untold().size()))
                : heard.untold();
    }
}
