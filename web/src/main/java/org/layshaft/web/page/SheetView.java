package org.layshaft.web.page;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Possibility;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Part;
import org.layshaft.web.desk.Differing;
import org.layshaft.web.drawing.Drawing;
import org.layshaft.web.drawing.View;

/**
 * The drawing with what stands around it.
 *
 * @param steps through the gears
 * @param svg the drawing, its parts being links
 * @param title what is drawn: {@code third gear}
 * @param ratio of the gear drawn; null where it is none
 * @param verdict of the gear drawn
 * @param supposing which of several possibilities is drawn; null where there is one
 * @param undrawn parts that have no figure in the drawing, by where they are
 * @param way the parts that the power goes through, in order; empty where none goes through
 */
record SheetView(
        String layoutName,
        List<StepView> steps,
        String svg,
        String title,
        NumberView ratio,
        MarkView mark,
        String verdict,
        String supposing,
        List<PartGroupView> undrawn,
        List<LinkView> way) {

    static SheetView of(Scene scene) {
        Optional<GearVerdict> gear = scene.gear();
        List<StepView> steps = StepView.all(scene);
        StepView step = steps.stream().filter(StepView::current).findFirst().orElse(null);
        Set<String> drawn = new HashSet<>();
        String svg = drawing(scene, part -> {
                    drawn.add(part);
                    return Optional.of(scene.address().at(part).link() + "#sheet");
                })
                .svg();
        return new SheetView(
                scene.layout().name(),
                steps,
                svg,
                title(scene),
                gear.map(GearVerdict::ratio).map(NumberView::of).orElse(null),
                step == null ? null : step.mark(),
                step == null ? null : step.verdict(),
                supposing(scene).orElse(null),
                PartGroupView.of(scene, part -> !drawn.contains(part.id())),
                gear.map(each -> way(each, scene)).orElse(List.of()));
    }

    /**
     * The drawing alone.
     *
     * @param linkOf where a part leads, by its id; empty for nowhere
     */
    static Drawing drawing(Scene scene, Function<String, Optional<String>> linkOf) {
        Set<String> meant = new HashSet<>(scene.answer().partsMeant());
        scene.part().map(Part::id).ifPresent(meant::add);
        Set<String> faulty =
                new HashSet<>(scene.faults().stream().map(Fault::part).toList());
        return Drawing.of(scene.layout(), new View(scene.stance(), scene.motion(), faulty, meant, linkOf, "box-"));
    }

    private static String title(Scene scene) {
        if (scene.inNeutral()) {
            return "Neutral";
        }
        return scene.gear().map(gear -> "Gear " + gear.gear()).orElse("Two at once");
    }

    private static Optional<String> supposing(Scene scene) {
        List<Possibility> possibilities = scene.gear()
                .map(GearVerdict::possibilities)
                .orElse(scene.answer().whatIf().neutral().possibilities());
        return Differing.among(possibilities).stream().findFirst().map(Possibility::says);
    }

    private static List<LinkView> way(GearVerdict gear, Scene scene) {
        return gear.path().stream().map(step -> scene.linkTo(step.part())).toList();
    }

    public boolean hasUndrawn() {
        return !undrawn.isEmpty();
    }

    public boolean hasWay() {
        return !way.isEmpty();
    }
}
