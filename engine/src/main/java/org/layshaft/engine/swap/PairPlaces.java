package org.layshaft.engine.swap;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.train.Balance;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.Statics;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.train.TrainSolver;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;

/** Finds the pair of a gear, and tries out what its teeth do to the ratio. */
record PairPlaces(Layout layout, Box box) {
    private static final Fraction TWO = Fraction.of(2);

    /** The pair that carries the power in this gear and in no other of the lever. */
    Telling<PairPlace> ownOf(Box.DerivedGear gear) {
        Set<Mesh> elsewhere = box.gears().stream()
                .filter(other -> !other.first().equals(gear.first()))
                .flatMap(other -> loaded(other.stance()).stream())
                .collect(Collectors.toSet());
        List<Mesh> own = loaded(gear.stance()).stream()
                .filter(mesh -> !elsewhere.contains(mesh))
                .toList();
        String name = Names.gearName(gear.name());
        if (own.isEmpty()) {
            return Telling.cannotBeTold(List.of(name + " has no pair of its own"));
        }
        return of(gear, own.get(0))
                .then(place -> own.stream()
                                .allMatch(mesh ->
                                        place.gears().toList().containsAll(List.of(mesh.first(), mesh.second())))
                        ? Telling.told(place)
                        : Telling.missing("which pair of %s is to change, of %s,"
                                .formatted(
                                        name,
                                        Names.joined(own.stream().map(Mesh::id).toList()))));
    }

    /** Any pair that the power goes through in this gear. */
    Telling<PairPlace> of(Box.DerivedGear gear, Mesh mesh) {
        String names = "%s and %s"
                .formatted(
                        layout.gear(mesh.first()).name(),
                        layout.gear(mesh.second()).name());
        if (mesh.kind() == MeshKind.CHAIN || mesh.kind().isBevel()) {
            return Telling.cannotBeTold(List.of(
                    "%s do not mesh on parallel shafts, and no centre distance binds their teeth".formatted(names)));
        }
        if (!loaded(gear.stance()).contains(mesh)) {
            return Telling.cannotBeTold(
                    List.of("%s carry no power in %s".formatted(names, Names.gearName(gear.name()))));
        }
        List<String> firsts = together(gear.stance(), mesh.first(), mesh.second());
        List<String> seconds = together(gear.stance(), mesh.second(), mesh.first());
        OptionalInt powerOfFirst = power(gear, firsts);
        OptionalInt powerOfSecond = power(gear, seconds);
        return powerOfFirst.isEmpty() || powerOfSecond.isEmpty()
                ? Telling.cannotBeTold(List.of("the ratio of %s does not follow the teeth of %s alone"
                        .formatted(Names.gearName(gear.name()), names)))
                : Telling.told(new PairPlace(
                        layout,
                        mesh,
                        firsts,
                        seconds,
                        gear.ratio(),
                        powerOfFirst.getAsInt(),
                        powerOfSecond.getAsInt()));
    }

    private Set<Mesh> loaded(Stance stance) {
        Train train = new TrainBuilder(layout, Changes.NONE).at(stance);
        Optional<Balance.Torques> torques = Statics.of(train).torques();
        return train.connections().stream()
                .filter(Connection.Meshing.class::isInstance)
                .filter(connection ->
                        torques.filter(each -> each.carries(connection)).isPresent())
                .map(connection -> ((Connection.Meshing) connection).mesh())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The gear alone; where that would lock the box, with all that are alike beside the same mate. */
    private List<String> together(Stance stance, String gear, String mate) {
        if (ratioWithDoubled(stance, List.of(gear)).isPresent()) {
            return List.of(gear);
        }
        return layout.everyMesh()
                .filter(mesh -> mesh.joins(mate))
                .map(mesh -> mesh.other(mate))
                .filter(other -> layout.gear(other).teeth() == layout.gear(gear).teeth())
                .toList();
    }

    /** How the ratio follows the teeth of these gears, found by giving them twice as many. */
    private OptionalInt power(Box.DerivedGear gear, List<String> gears) {
        Optional<Fraction> factor = ratioWithDoubled(gear.stance(), gears).map(ratio -> ratio.over(gear.ratio()));
        return Stream.of(Map.entry(TWO, 1), Map.entry(TWO.inverse(), -1), Map.entry(Fraction.ONE, 0))
                .filter(power -> factor.filter(power.getKey()::equals).isPresent())
                .mapToInt(Map.Entry::getValue)
                .findFirst();
    }

    private Optional<Fraction> ratioWithDoubled(Stance stance, List<String> gears) {
        Change doubled = Change.NONE;
        for (String id : gears) {
            Gear gear = layout.gear(id);
            doubled = doubled.with(gear.withTeeth(2 * gear.teeth()));
        }
        return TrainSolver.solve(new TrainBuilder(doubled.applyTo(layout), Changes.NONE).at(stance))
                .ratio()
                .map(Fraction::absolute);
    }
}
