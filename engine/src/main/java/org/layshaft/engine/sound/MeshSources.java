package org.layshaft.engine.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Source.Beat;
import org.layshaft.engine.train.Connection.Meshing;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.MeshKind;

/** Teeth that meet, and how often the same ones do. */
record MeshSources(Rates rates, Names names) {

    Stream<Source> all() {
        return rates.meshes().stream().flatMap(this::of);
    }

    /** None for a pair that stands, or goes round as one with its carrier, or whose speed nothing fixes. */
    private Stream<Source> of(Meshing meshing) {
        String first = meshing.mesh().first();
        String second = meshing.mesh().second();
        Optional<Fraction> ofFirst = rates.inItsFrame(first, meshing);
        Optional<Fraction> ofSecond = rates.inItsFrame(second, meshing);
        if (ofFirst.isEmpty() || ofSecond.isEmpty() || ofFirst.get().isZero()) {
            return Stream.empty();
        }
        Order meeting = Order.exactly(ofFirst.get()).times(meshing.firstTeeth());
        String how = "%s, or %s"
                .formatted(
                        product(first, meshing.firstTeeth(), ofFirst.get(), meshing),
                        product(second, meshing.secondTeeth(), ofSecond.get(), meshing));
        List<Beat> beats = beats(meshing, ofFirst.get(), ofSecond.get());
        if (meshing.mesh().kind() == MeshKind.CHAIN) {
            String what = "the links of the chain run onto %s and %s".formatted(names.the(first), names.the(second));
            return Stream.of(source(SourceKind.CHAIN, meshing, what, how, meeting, beats));
        }
        String what = "the teeth of %s and %s meet".formatted(names.the(first), names.the(second));
        Source mesh = source(SourceKind.MESH, meshing, what, how, meeting, beats);
        return Stream.concat(Stream.of(mesh), pairing(meshing, mesh));
    }

    private Stream<Source> pairing(Meshing meshing, Source mesh) {
        Pairing pairing = new Pairing(meshing.firstTeeth(), meshing.secondTeeth(), mesh.order());
        String both = "%s and %s"
                .formatted(
                        names.the(meshing.mesh().first()),
                        names.the(meshing.mesh().second()));
        List<Source> found = new ArrayList<>();
        if (pairing.phases() > 1) {
            found.add(source(
                    SourceKind.ASSEMBLY_PHASE,
                    meshing,
                    "the teeth of %s that meet one another are round once".formatted(both),
                    "%s meetings of teeth / %d, the prime factors that %d and %d have in common"
                            .formatted(
                                    mesh.order().perTurn(),
                                    pairing.phases(),
                                    meshing.firstTeeth(),
                                    meshing.secondTeeth()),
                    pairing.assemblyPhase(),
                    List.of()));
        }
        found.add(source(
                SourceKind.HUNTING_TOOTH,
                meshing,
                "the same two teeth of %s meet again".formatted(both),
                "%s meetings of teeth × %d / (%d × %d)"
                        .formatted(
                                mesh.order().perTurn(), pairing.phases(), meshing.firstTeeth(), meshing.secondTeeth()),
                pairing.huntingTooth(),
                List.of()));
        return found.stream();
    }

    private Source source(SourceKind kind, Meshing meshing, String what, String how, Order order, List<Beat> beats) {
        List<String> parts = List.of(meshing.mesh().first(), meshing.mesh().second());
        return new Source(kind, parts, what, how, order, rates.carries(meshing), beats);
    }

    private String product(String gear, int teeth, Fraction turns, Meshing meshing) {
        String against = rates.frameOf(gear, meshing)
                .map(carrier -> " against " + names.the(carrier))
                .orElse("");
        return "%d teeth × %s of %s%s".formatted(teeth, Counted.turns(turns), names.the(gear), against);
    }

    private List<Beat> beats(Meshing meshing, Fraction ofFirst, Fraction ofSecond) {
        String first = meshing.mesh().first();
        String second = meshing.mesh().second();
        List<Beat> beats = new ArrayList<>(List.of(turning(first, ofFirst), turning(second, ofSecond)));
        passing(first, ofFirst, rates.alike(second)).ifPresent(beats::add);
        passing(second, ofSecond, rates.alike(first)).ifPresent(beats::add);
        return beats;
    }

    private Beat turning(String gear, Fraction turns) {
        return new Beat(gear, "the turns of " + names.the(gear), Order.exactly(turns));
    }

    private Optional<Beat> passing(String gear, Fraction turns, int planets) {
        return Optional.of(planets)
                .filter(count -> count > 1)
                .map(count -> new Beat(
                        gear,
                        "the %d planets that pass %s".formatted(count, names.the(gear)),
                        Order.exactly(turns).times(count)));
    }
}
