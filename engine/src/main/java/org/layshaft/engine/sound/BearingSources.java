package org.layshaft.engine.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Source.Beat;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Bearing;

/** Bearings whose two rings turn unlike, and what rolls between them, as far as its sizes are stated. */
record BearingSources(Rates rates, Names names) {

    Stream<Source> all() {
        return turning()
                .flatMap(place -> Stream.concat(
                        Stream.of(ring(place)),
                        rolling(place).map(orders -> of(place, orders)).stream().flatMap(List::stream)));
    }

    /** Why some of what they sound cannot be told, in sentences. */
    List<String> untold() {
        List<String> sentences = new ArrayList<>();
        List<String> bare = turning()
                .map(BearingPlace::bearing)
                .filter(bearing -> bearing.rolling().isEmpty())
                .map(Bearing::id)
                .toList();
        if (!bare.isEmpty()) {
            sentences.add(
                    "What the balls or rollers of %s sound cannot be told, their number, their diameter, the pitch diameter and the contact angle are missing."
                            .formatted(names.list(bare)));
        }
        turning()
                .forEach(place -> place.bearing()
                        .rolling()
                        .flatMap(stated ->
                                RollingOrders.of(place.bearing(), stated).whyNot())
                        .ifPresent(why -> sentences.add("What the balls or rollers of %s sound %s."
                                .formatted(names.the(place.bearing().id()), why))));
        return sentences;
    }

    private Stream<BearingPlace> turning() {
        return rates.layout()
                .all(Bearing.class)
                .flatMap(bearing -> BearingPlace.of(bearing, rates).stream())
                .filter(BearingPlace::rolls);
    }

    private static Optional<RollingOrders> rolling(BearingPlace place) {
        return place.bearing()
                .rolling()
                .map(stated -> RollingOrders.of(place.bearing(), stated))
                .flatMap(Telling::value);
    }

    private Source ring(BearingPlace place) {
        String what = "one ring of %s turns once against the other".formatted(name(place));
        return source(SourceKind.BEARING, place, what, againstEachOther(place), Order.exactly(place.difference()));
    }

    private List<Source> of(BearingPlace place, RollingOrders rolling) {
        String name = name(place);
        Fraction turns = place.difference();
        String between = againstEachOther(place);
        int count = rolling.count();
        String along = rolling.saysAlong();
        String share = rolling.saysShare();
        Beat withInner = beat(place.bearing().inner(), Order.exactly(place.inner()));
        Beat withOuter = beat(place.bearing().outer(), Order.exactly(place.outer()));
        Beat withCage = new Beat(place.bearing().id(), "the turns of the cage of " + name, place.cage(rolling));
        List<Source> found = new ArrayList<>(List.of(
                source(
                        SourceKind.OUTER_RACE,
                        place,
                        "the balls or rollers of %s pass one place on its outer race".formatted(name),
                        "%d/2 × (1 − %s) × %s".formatted(count, along, between),
                        rolling.outerRace().times(turns),
                        withOuter),
                source(
                        SourceKind.INNER_RACE,
                        place,
                        "the balls or rollers of %s pass one place on its inner race".formatted(name),
                        "%d/2 × (1 + %s) × %s".formatted(count, along, between),
                        rolling.innerRace().times(turns),
                        withInner),
                source(
                        SourceKind.ELEMENT_STRIKES,
                        place,
                        "one place on a ball or roller of %s strikes both races, twice in each of its own turns"
                                .formatted(name),
                        "(1 − (%s)²) / (%s) × %s".formatted(along, share, between),
                        rolling.strikes().times(turns),
                        withCage),
                source(
                        SourceKind.ELEMENT_SPIN,
                        place,
                        "a ball or roller of %s turns once about itself".formatted(name),
                        "1/2 × (1 − (%s)²) / (%s) × %s".formatted(along, share, between),
                        rolling.spin().times(turns),
                        withCage),
                source(
                        SourceKind.CAGE,
                        place,
                        "the cage of %s goes round once against its outer ring".formatted(name),
                        "1/2 × (1 − %s) × %s".formatted(along, between),
                        rolling.cage().times(turns))));
        if (!place.outer().isZero()) {
            found.add(cageInPlace(place, rolling));
        }
        return found;
    }

    /** Where the outer ring turns as well, the cage goes round in the case at another speed than in the ring. */
    private Source cageInPlace(BearingPlace place, RollingOrders rolling) {
        return source(
                SourceKind.CAGE,
                place,
                "the cage of %s goes round once in %s"
                        .formatted(name(place), place.carried() ? "its carrier" : "the case"),
                "%s of the outer ring + 1/2 × (1 − %s) × %s against it"
                        .formatted(place.outer(), rolling.saysAlong(), place.difference()),
                place.cage(rolling));
    }

    private Source source(SourceKind kind, BearingPlace place, String what, String how, Order order, Beat... beats) {
        List<Beat> heard =
                Stream.of(beats).filter(beat -> !beat.order().isZero()).toList();
        return new Source(kind, List.of(place.bearing().id()), what, how, order, isLoaded(place.bearing()), heard);
    }

    private Beat beat(String body, Order order) {
        String turns = body.equals(Bearing.CASE) ? "the case" : "the turns of " + names.the(body);
        return new Beat(body, turns, order);
    }

    private String name(BearingPlace place) {
        return names.the(place.bearing().id());
    }

    private String againstEachOther(BearingPlace place) {
        Bearing bearing = place.bearing();
        String outer = bearing.outer().equals(Bearing.CASE)
                ? (place.carried() ? "its carrier" : "the case")
                : names.the(bearing.outer());
        return "%s of %s against %s".formatted(Counted.turns(place.difference()), names.the(bearing.inner()), outer);
    }

    private boolean isLoaded(Bearing bearing) {
        return rates.bears(bearing.inner()) && (bearing.outer().equals(Bearing.CASE) || rates.bears(bearing.outer()));
    }
}
