package org.layshaft.engine.swap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.sound.Sounds;
import org.layshaft.engine.sound.Source;
import org.layshaft.engine.sound.SourceKind;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.teeth.BoxForces;
import org.layshaft.engine.teeth.InputTorque;
import org.layshaft.engine.train.Changes;
import org.layshaft.engine.train.TrainBuilder;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.words.Words;

/** Works out what each gear of a box in its vehicle comes to. */
record Figuring(Installed installed, Running running) {
    /** Parts are called as their layout calls them; nothing else is put into words here. */
    private static final Words NO_WORDS = new Words(Map.of(), Map.of(), Map.of(), Map.of(), List.of());

    GearFigures of(Box.DerivedGear gear) {
        RoadTable.Row row = installed.row(gear.name());
        Telling<BoxForces> forces =
                running.toldInput().then(input -> Telling.of(forces(gear, input), "a torque on the output"));
        return new GearFigures(
                gear.name(),
                gear.motion().ratio().orElseThrow(),
                row,
                afterShiftUp(row),
                wheelTorqueNm(row),
                meshes(gear),
                forces);
    }

    private Optional<Telling<Fraction>> afterShiftUp(RoadTable.Row row) {
        return row.step()
                .map(step -> running.toldShiftRpm()
                        .map(rpm -> installed.vehicle().gearing().rpmAfterShift(step.lower(), step.higher(), rpm)));
    }

    /** What is lost is lost on the way of the power: to the wheels, or on the overrun from them. */
    private Telling<Fraction> wheelTorqueNm(RoadTable.Row row) {
        Telling<Fraction> efficiency =
                Telling.of(installed.vehicle().pull().efficiency(), "the efficiency from engine to wheels");
        return running.toldInput()
                .map(InputTorque::nm)
                .with(row.overall(), Fraction::times)
                .with(efficiency, (nm, part) -> nm.signum() < 0 ? nm.over(part) : nm.times(part));
    }

    private Optional<BoxForces> forces(Box.DerivedGear gear, InputTorque input) {
        return BoxForces.of(
                installed.layout(), new TrainBuilder(installed.layout(), Changes.NONE).at(gear.stance()), input);
    }

    private Map<String, Fraction> meshes(Box.DerivedGear gear) {
        Map<String, Fraction> meshes = new TreeMap<>();
        Sounds.inGear(installed.layout(), new Names(installed.layout(), NO_WORDS), gear).sources().stream()
                .filter(Source::loaded)
                .filter(source -> source.kind() == SourceKind.MESH || source.kind() == SourceKind.CHAIN)
                .forEach(source -> meshes.put(
                        new Mesh(source.parts().get(0), source.parts().get(1)).id(),
                        source.order().perTurn()));
        return meshes;
    }
}
