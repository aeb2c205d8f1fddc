package org.layshaft.engine.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Shaft;

/** What else may be heard of a box and what is around it, and which fact is missing to tell how often it repeats. */
record Untold(Rates rates, Names names) {

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add("What the engine itself sounds cannot be told, the number of its cylinders is missing.");
        Stream.of(atAnySpeed(), wheels(), driveJoints(), chains())
                .flatMap(Optional::stream)
                .forEach(sentences::add);
        return sentences;
    }

    private Optional<String> atAnySpeed() {
        Layout layout = rates.layout();
        Stream<String> shafts = layout.all(Shaft.class)
                .filter(shaft -> shaft.carriedBy().isEmpty())
                .map(Shaft::id);
        Stream<String> gears = layout.all(Gear.class).map(Gear::id);
        List<String> free = Stream.concat(shafts, gears)
                .filter(body -> rates.of(body).isEmpty())
                .toList();
        return said(free, "How fast %s turns cannot be told, nothing fixes it so.");
    }

    private Optional<String> wheels() {
        Layout layout = rates.layout();
        boolean told = LineSources.drivesHalfShafts(layout)
                || layout.road().flatMap(Road::axleRatio).isPresent();
        return told
                ? Optional.empty()
                : Optional.of("How fast the wheels turn cannot be told, the axle ratio is missing.");
    }

    private Optional<String> driveJoints() {
        List<String> halfShafts =
                rates.layout().all(HalfShaft.class).map(HalfShaft::id).toList();
        return said(
                halfShafts,
                "What the joints of %s sound besides turning cannot be told, the number of their balls or arms is missing.");
    }

    private Optional<String> chains() {
        List<String> sprockets = rates.layout()
                .everyMesh()
                .filter(mesh -> mesh.kind() == MeshKind.CHAIN)
                .map(Mesh::first)
                .toList();
        return said(
                sprockets, "How often the chain on %s is round cannot be told, the number of its links is missing.");
    }

    private Optional<String> said(List<String> parts, String sentence) {
        return parts.isEmpty() ? Optional.empty() : Optional.of(sentence.formatted(names.list(parts)));
    }
}
