package org.layshaft.web.page;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Part;
import org.layshaft.web.desk.Differing;
import org.layshaft.web.desk.HandDesk;
import org.layshaft.web.drawing.Drawing;
import org.layshaft.web.drawing.Move;
import org.layshaft.web.drawing.Told;
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
 * @param hand what can be moved by hand
 * @param sight how the box is looked at
 * @param handout the drawing as files
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
        List<LinkView> way,
        HandView hand,
        SightView sight,
        HandoutView handout) {

    static SheetView of(Scene scene, HandDesk desk) {
        Optional<GearVerdict> gear = scene.gear();
        List<StepView> steps = StepView.all(scene);
        StepView step = steps.stream().filter(StepView::current).findFirst().orElse(null);
        Set<String> drawn = new HashSet<>();
        Drawing drawing = drawing(
                scene,
                part -> {
                    drawn.add(part);
                    return Optional.of(scene.address().at(part).link() + "#sheet");
                },
                true);
        String svg = drawing.svg();
        return new SheetView(
                scene.layout().name(),
                steps,
                svg,
                title(scene),
                scene.motion()
                        .flatMap(Motion::ratio)
                        .map(Fraction::absolute)
                        .map(NumberView::of)
                        .orElse(null),
                step == null ? null : step.mark(),
                step == null ? null : step.verdict(),
                supposing(scene).orElse(null),
                scene.running().from() == View.From.END
                        ? List.of()
                        : PartGroupView.of(scene, part -> !drawn.contains(part.id())),
                gear.map(each -> way(each, scene)).orElseGet(() -> way(scene)),
                HandView.of(scene, desk),
                SightView.of(scene),
                HandoutView.of(scene));
    }

    /**
     * The drawing alone.
     *
     * @param linkOf where a part leads, by its id; empty for nowhere
     * @param canMove whether sleeves can be moved in it
     */
    static Drawing drawing(Scene scene, Function<String, Optional<String>> linkOf, boolean canMove) {
        Set<String> meant = new HashSet<>(scene.answer().partsMeant());
        scene.part().map(Part::id).ifPresent(meant::add);
        Set<String> faulty =
                new HashSet<>(scene.faults().stream().map(Fault::part).toList());
        Running running = scene.running();
        View view = new View(scene.stance(), scene.motion(), faulty, meant, linkOf, "box-")
                .from(running.from())
                .in(running.printing())
                .telling(new Told(scene.torques(), running.rpm(), running.nm(), running.dialect()::say, Dialect::both));
        return Drawing.of(scene.layout(), canMove ? view.moving(move -> Optional.of(moved(move, scene))) : view);
    }

    private static String moved(Move move, Scene scene) {
        Stance stance = HandDesk.moved(scene.layout(), scene.stance(), move.member(), move.to());
        return scene.address().moved(HandDesk.written(stance)).link() + "#sheet";
    }

    private static String title(Scene scene) {
        if (scene.inNeutral()) {
            return "Neutral";
        }
        return scene.gear()
                .map(gear -> "Gear " + gear.gear())
                .orElse(scene.byHand().isPresent() ? "Set by hand" : "Two at once");
    }

    private static Optional<String> supposing(Scene scene) {
        List<Possibility> possibilities = scene.gear()
                .map(GearVerdict::possibilities)
                .orElse(scene.answer().whatIf().neutral().possibilities());
        return Differing.among(possibilities).stream().findFirst().map(Possibility::says);
    }

    private static List<LinkView> way(Scene scene) {
        return scene.byHand()
                .map(set -> set.motion().carrying().stream().map(scene::linkTo).toList())
                .orElse(List.of());
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
