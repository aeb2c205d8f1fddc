package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MISSING;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.road.Gearing;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.Change;
import org.layshaft.engine.swap.FittedGears;
import org.layshaft.engine.swap.GearRules;
import org.layshaft.engine.swap.OtherTyre;
import org.layshaft.engine.swap.SetsForWish;
import org.layshaft.engine.swap.Wish;
import org.layshaft.engine.swap.WishSolver;
import org.layshaft.engine.swap.WishedSets;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Road;

/** Says what meets a wish: teeth, sets of the catalogue, axle ratios, driven speed gears. Thread-safe. */
public final class WishDesk {
    private final PartsDesk parts;

    public WishDesk(PartsDesk parts) {
        this.parts = parts;
    }

    /** Throws {@link BadInputException} with everything that cannot be used. */
    public WishAnswer wish(WishRequest request) {
        WrittenNumbers written = new WrittenNumbers();
        if (request.box().isEmpty()) {
            written.add(new BadInputException(
                    MISSING, "The box is missing. Give the id of a layout or of a build: curlew-early"));
        }
        if (request.kind().isEmpty()) {
            written.add(new BadInputException(MISSING, "The wish is missing. Give what is wished: nearer"));
        }
        Optional<WishKind> kind = request.kind().flatMap(word -> written.unlessRefused(() -> WishKind.of(word)));
        Optional<Standing> standing = request.box().flatMap(box -> written.unlessRefused(() -> standing(box, request)));
        Optional<WishRead> read = kind.flatMap(
                wished -> standing.flatMap(box -> written.unlessRefused(() -> read(wished, request, box))));
        written.refuse();
        return answer(standing.orElseThrow(), read.orElseThrow());
    }

    /** What there is. */
    private record Standing(Layout layout, Optional<BuiltBox> built, int others, Reasoner reasoner) {
        Box derived() {
            return reasoner.box(layout);
        }

        Vehicle vehicle() {
            return Vehicle.of(derived(), layout.road().orElse(Road.NOTHING));
        }
    }

    private Standing standing(String name, WishRequest request) {
        Optional<Layout> layout = parts.layout(name);
        boolean isBuilt = layout.isEmpty()
                || parts.counter().boxes().values().stream()
                        .anyMatch(box -> box.layout().id().equals(layout.get().id()));
        if (!isBuilt && request.serial().isEmpty()) {
            return new Standing(onTyreBefore(layout.get(), request), Optional.empty(), 0, parts.passingReasoner());
        }
        WrittenNumbers number = new WrittenNumbers();
        Optional<Integer> serial = number.serial(request.serial());
        number.refuse();
        List<BuiltBox> boxes = parts.boxes().called(name, serial);
        BuiltBox built = boxes.get(0);
        return new Standing(
                onTyreBefore(FittedGears.layout(built.fitted()), request),
                Optional.of(built),
                boxes.size() - 1,
                parts.passingReasoner());
    }

    private static Layout onTyreBefore(Layout layout, WishRequest request) {
        return request.wasTyre()
                .map(code -> Change.NONE.with(new OtherTyre.OfSize(code)).applyTo(layout))
                .orElse(layout);
    }

    private static WishRead read(WishKind kind, WishRequest request, Standing box) {
        Gearing gearing = box.vehicle().gearing();
        return new WishReading(request, kind, gearing, box.layout().name()).read();
    }

    private WishAnswer answer(Standing box, WishRead read) {
        WrittenNumbers possible = new WrittenNumbers();
        Optional<WishAnswer> answer = possible.unlessRefused(() -> new WishAnswer(
                box.layout(),
                box.built(),
                box.others(),
                "%s: %s"
                        .formatted(
                                box.built()
                                        .map(FitWording::of)
                                        .orElse(box.layout().name()),
                                read.says()),
                read.wish().map(wish -> ofGear(box, wish, read.centreMm())),
                read.axle()
                        .map(wished ->
                                new AxleWish(parts.catalogue(), box.layout(), box.derived(), box.vehicle()).of(wished)),
                read.reading().map(change -> new ReadingWish(parts, box.layout(), box.built()).of(change))));
        possible.refuse();
        return answer.orElseThrow();
    }

    private WishAnswer.OfGear ofGear(Standing box, Wish wish, Optional<Fraction> centreMm) {
        WishSolver solver = new WishSolver(box.layout(), box.reasoner());
        Telling<Mesh> pair = solver.pairFor(wish);
        GearRules rules = rules(box, pair, centreMm);
        Telling<WishedSets> sets = box.built()
                .map(built -> new SetsForWish(parts.counter(), box.reasoner()).in(built, wish))
                .orElseGet(() -> Telling.missing(
                        "a build of %s in the catalogue".formatted(box.layout().name())));
        return new WishAnswer.OfGear(
                wish.gear(),
                wish instanceof Wish.Nearer,
                box.vehicle().gearing().ratios(),
                solver.targetOf(wish),
                pair,
                rules,
                solver.solve(wish, rules),
                sets);
    }

    /** At the distance that was told, or else that of the case. */
    private static GearRules rules(Standing box, Telling<Mesh> pair, Optional<Fraction> centreMm) {
        double helixDeg = pair.value()
                .map(mesh -> box.layout().gear(mesh.first()).helixDeg())
                .orElse(0.0);
        Optional<Double> mm = centreMm.map(Fraction::toDouble)
                .or(() -> pair.value().flatMap(mesh -> box.built().flatMap(built -> centreMm(built.fitted(), mesh))));
        return GearRules.common(mm.map(OptionalDouble::of).orElse(OptionalDouble.empty()), helixDeg);
    }

    private static Optional<Double> centreMm(Fitted fitted, Mesh mesh) {
        String first = fitted.layout().gear(mesh.first()).carrier();
        String second = fitted.layout().gear(mesh.second()).carrier();
        return fitted.centre(first, second).find(FactName.CENTRE_MM).map(Fact::number);
    }
}
