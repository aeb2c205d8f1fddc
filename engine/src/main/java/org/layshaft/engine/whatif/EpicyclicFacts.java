package org.layshaft.engine.whatif;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Ties;
import org.layshaft.engine.train.Connection;
import org.layshaft.engine.train.Connection.Meshing;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** What planets tie to one another: each set as a whole, and each planet by what it meshes with. */
final class EpicyclicFacts {
    /** Stands between the ids of the connections that a set consists of. */
    static final String AND = " + ";

    private final Layout layout;
    private final List<Meshing> meshings;
    private final Map<String, List<Connection.Seated>> seatedOnSpindle;

    EpicyclicFacts(Layout layout, List<Connection> permanent) {
        this.layout = layout;
        this.meshings = permanent.stream()
                .filter(Meshing.class::isInstance)
                .map(Meshing.class::cast)
                .filter(meshing -> meshing.carrier().isPresent())
                .toList();
        this.seatedOnSpindle = permanent.stream()
                .filter(Connection.Seated.class::isInstance)
                .map(Connection.Seated.class::cast)
                .filter(seated -> isSpindle(seated.carrier()))
                .collect(Collectors.groupingBy(Connection.Seated::carrier));
    }

    Stream<Fact> all() {
        List<Fact> facts = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (Meshing meshing : meshings) {
            Stream.of(meshing.mesh().first(), meshing.mesh().second())
                    .filter(gear -> !isPlanet(gear) && !told.contains(gear))
                    .forEach(central -> tell(central, meshing.carrier().orElseThrow(), told, facts));
        }
        return facts.stream();
    }

    /**
     * How a gear turns relative to the carrier, for one turn of the central gear that was begun with.
     *
     * @param spins whether it turns about an axis across the carrier's, so that its own speed is meant
     */
    private record Reached(String gear, Fraction turns, boolean spins, List<String> connections) {
        Reached on(String next, Fraction ratio, boolean nextSpins, String connection) {
            List<String> more = new ArrayList<>(connections);
            more.add(connection);
            return new Reached(next, turns.times(ratio), nextSpins, more);
        }

        String written() {
            return String.join(AND, connections);
        }
    }

    private void tell(String central, String carrier, Set<String> told, List<Fact> facts) {
        told.add(central);
        for (Reached reached : reachedFrom(central, carrier)) {
            if (!isPlanet(reached.gear())) {
                told.add(reached.gear());
                facts.add(new Ties.EpicyclicSet(reached.written(), central, reached.gear(), carrier, reached.turns()));
            } else {
                Fraction byCarrier = reached.spins() ? reached.turns().negated() : Fraction.ONE.minus(reached.turns());
                facts.add(new Ties.PlanetTurns(
                        reached.written(), central, carrier, reached.gear(), reached.turns(), byCarrier));
            }
        }
    }

    private List<Reached> reachedFrom(String central, String carrier) {
        Map<String, Reached> reached = new LinkedHashMap<>();
        Deque<Reached> open = new ArrayDeque<>(List.of(new Reached(central, Fraction.ONE, false, List.of())));
        while (!open.isEmpty()) {
            Reached here = open.remove();
            boolean passesOn = here.connections().isEmpty() || isPlanet(here.gear());
            (passesOn ? next(here, carrier) : Stream.<Reached>of())
                    .filter(next -> !next.gear().equals(central) && !reached.containsKey(next.gear()))
                    .forEach(next -> {
                        reached.put(next.gear(), next);
                        open.add(next);
                    });
        }
        return List.copyOf(reached.values());
    }

    private Stream<Reached> next(Reached here, String carrier) {
        Stream<Reached> meshing = meshings.stream()
                .filter(each -> each.carrier().orElseThrow().equals(carrier)
                        && each.mesh().joins(here.gear()))
                .map(each -> along(each, here));
        Stream<Reached> stepped = spindleOf(here.gear()).stream()
                .flatMap(spindle -> seatedOnSpindle.get(spindle).stream())
                .filter(seated -> !seated.body().equals(here.gear()))
                .map(seated -> here.on(seated.body(), Fraction.ONE, here.spins(), seated.id()));
        return Stream.concat(meshing, stepped);
    }

    private static Reached along(Meshing meshing, Reached here) {
        boolean isFirst = meshing.mesh().first().equals(here.gear());
        int own = isFirst ? meshing.firstTeeth() : meshing.secondTeeth();
        int others = isFirst ? meshing.secondTeeth() : meshing.firstTeeth();
        String other = meshing.mesh().other(here.gear());
        boolean spins = meshing.crossing().filter(other::equals).isPresent();
        return here.on(other, Fraction.of((long) meshing.mesh().kind().sense() * own, others), spins, meshing.id());
    }

    private Optional<String> spindleOf(String gear) {
        return seatedOnSpindle.entrySet().stream()
                .filter(entry -> entry.getValue().stream()
                        .anyMatch(seated -> seated.body().equals(gear)))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private boolean isPlanet(String gear) {
        return isSpindle(layout.gear(gear).carrier());
    }

    private boolean isSpindle(String shaft) {
        return layout.find(Shaft.class, shaft)
                .filter(one -> one.carriedBy().isPresent())
                .isPresent();
    }
}
