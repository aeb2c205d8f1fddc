package org.layshaft.engine.swap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.involute.DiametralPitch;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Hand;
import org.layshaft.kb.layout.Layout;

/** What the parts in a box make of its layout: the gears have the teeth of the parts that stand there. */
public final class FittedGears {
    private FittedGears() {}

    /** The layout as the parts have it; of a gear whose part is not known, as the layout states it. */
    public static Layout layout(Fitted fitted) {
        Map<String, Gear> gears = fitted.layout()
                .all(Gear.class)
                .filter(gear -> fitted.partAt(gear.id()) != null)
                .map(gear -> gear(gear, fitted))
                .flatMap(told -> told.value().stream())
                .collect(Collectors.toMap(Gear::id, Function.identity()));
        Change change = gears.values().stream().reduce(Change.NONE, Change::with, (one, other) -> other);
        return change.applyTo(fitted.layout());
    }

    /**
     * What putting parts in changes, against {@link #layout} of the box before. A fact that is missing of a gear that was
     * put in is missing for the whole.
     */
    public static Telling<Change> change(Fitted before, Fitted then) {
        return change(layout(before), before, then);
    }

    /** The same, where the layout of the box before is at hand. */
    static Telling<Change> change(Layout was, Fitted before, Fitted then) {
        List<Telling<Gear>> gears = new ArrayList<>();
        was.all(Gear.class)
                .filter(gear -> !Objects.equals(before.partAt(gear.id()), then.partAt(gear.id())))
                .filter(gear -> !before.at(gear.id()).equals(then.at(gear.id())))
                .forEach(gear -> gears.add(gear(gear, then)));
        Telling<Change> change =
                Telling.all(gears).map(all -> all.stream().reduce(Change.NONE, Change::with, (one, other) -> other));
        boolean sameSpeedDrive = before.at(Build.SPEED_DRIVING).equals(then.at(Build.SPEED_DRIVING))
                && before.at(Build.SPEED_DRIVEN).equals(then.at(Build.SPEED_DRIVEN));
        return sameSpeedDrive
                ? change
                : change.with(
                        speedGears(before).with(speedGears(then), (one, other) -> new SpeedDrive(one, other)),
                        Change::with);
    }

    private static Telling<SpeedGears> speedGears(Fitted fitted) {
        return teeth(fitted, Build.SPEED_DRIVING).with(teeth(fitted, Build.SPEED_DRIVEN), SpeedGears::new);
    }

    private static Telling<Gear> gear(Gear gear, Fitted fitted) {
        Facts facts = fitted.at(gear.id());
        Telling<Double> helix = told(fitted, gear.id(), FactName.HELIX_DEG).map(Fact::number);
        Telling<Double> pressure =
                told(fitted, gear.id(), FactName.PRESSURE_ANGLE_DEG).map(Fact::number);
        return teeth(fitted, gear.id())
                .with(
                        helix.with(pressure, List::of),
                        (teeth, angles) -> new Gear(
                                gear.named(),
                                gear.carrier(),
                                gear.seat(),
                                word(facts, FactName.FORM, GearForm.values(), GearForm::word)
                                        .orElse(gear.form()),
                                teeth,
                                moduleMm(facts),
                                angles.get(0),
                                word(facts, FactName.HAND, Hand.values(), Hand::word),
                                angles.get(1)));
    }

    private static Telling<Integer> teeth(Fitted fitted, String place) {
        return told(fitted, place, FactName.TEETH).map(fact -> (int) fact.number());
    }

    private static Telling<Fact> told(Fitted fitted, String place, FactName name) {
        CataloguePart part = fitted.partAt(place);
        String at = "the %s%s".formatted(fitted.nameOf(place), part == null ? "" : " " + part.number());
        return Telling.of(fitted.at(place).find(name), "the %s of %s".formatted(name.spoken(), at));
    }

    private static OptionalDouble moduleMm(Facts facts) {
        Optional<Double> pitch =
                facts.find(FactName.DIAMETRAL_PITCH).map(fact -> new DiametralPitch(fact.number()).moduleMm());
        return pitch.or(() -> facts.find(FactName.MODULE_MM).map(Fact::number))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static <E> Optional<E> word(Facts facts, FactName name, E[] values, Function<E, String> spelling) {
        return facts.find(name)
                .flatMap(fact -> Arrays.stream(values)
                        .filter(value -> spelling.apply(value).equals(fact.text()))
                        .findFirst());
    }
}
