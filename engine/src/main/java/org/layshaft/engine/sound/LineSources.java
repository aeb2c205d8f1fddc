package org.layshaft.engine.sound;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;

/** What the drive goes on by behind the box: joints between shafts, and the wheels behind an axle that is only stated. */
record LineSources(Rates rates, Names names) {

    Stream<Source> all() {
        return Stream.concat(joints(), wheelsBehind().stream());
    }

    private Stream<Source> joints() {
        return rates.layout()
                .all(Joint.class)
                .flatMap(joint -> rates.of(joint.from())
                        .filter(turns -> !turns.isZero())
                        .map(turns -> of(joint, turns))
                        .orElse(Stream.empty()));
    }

    private Stream<Source> of(Joint joint, Fraction turns) {
        String name = names.the(joint.id());
        boolean loaded =
                rates.carrying().contains(joint.from()) && rates.carrying().contains(joint.to());
        String with = "%s of %s".formatted(Counted.turns(turns), names.the(joint.from()));
        return Stream.of(
                new Source(
                        SourceKind.JOINT,
                        List.of(joint.id()),
                        name + " turns once",
                        with,
                        Order.exactly(turns),
                        loaded,
                        List.of()),
                new Source(
                        SourceKind.UNIVERSAL_JOINT,
                        List.of(joint.id()),
                        "%s runs fast and slow twice in each turn, where it has universal joints".formatted(name),
                        "2 × " + with,
                        Order.exactly(turns).times(2),
                        loaded,
                        List.of()));
    }

    /** Those behind the stated axle ratio, or behind a further reduction at the wheels. */
    private Optional<Source> wheelsBehind() {
        Layout layout = rates.layout();
        Optional<BigDecimal> ratio = layout.road().flatMap(Road::axleRatio);
        boolean alreadyThere = drivesHalfShafts(layout)
                && ratio.filter(each -> each.compareTo(BigDecimal.ONE) != 0).isEmpty();
        if (alreadyThere) {
            return Optional.empty();
        }
        String output = rates.train().output();
        return ratio.map(Fraction::of)
                .flatMap(axle -> rates.of(output)
                        .filter(turns -> !turns.isZero())
                        .map(turns -> wheels(layout.outputs().get(0), turns, axle)));
    }

    private Source wheels(String output, Fraction turns, Fraction axle) {
        return new Source(
                SourceKind.WHEEL,
                List.of(output),
                "the driven wheels with their tyres and half-shafts turn once",
                "%s of %s / the axle ratio %s".formatted(Counted.turns(turns), names.the(output), axle),
                Order.exactly(turns.over(axle)),
                rates.carrying().contains(output),
                List.of());
    }

    static boolean drivesHalfShafts(Layout layout) {
        return layout.outputs().stream()
                .allMatch(output -> layout.find(HalfShaft.class, output).isPresent());
    }
}
