package org.layshaft.web.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** On which side of an epicyclic set the carrier's arms and the ring's web come down to their shafts. */
record PlanetSides(Layout layout, Columns columns, Sizes sizes) {
    private static final double TO_ARM = 3;
    private static final double TO_WEB = 13;
    static final double ARM = 6;
    static final double WEB = 6;

    /** The arms of the carrier beside these planets. */
    Stands.Stand arm(Shaft spindle) {
        List<String> along = spindle.along();
        int way = armWay(spindle);
        String last = along.get(way > 0 ? along.size() - 1 : 0);
        return beside(spindle.id(), last, way, TO_ARM, ARM);
    }

    /** The web of a ring; for one that nothing but its teeth is tied to, the ring itself. */
    Stands.Stand web(Gear ring) {
        int way = webWay(ring);
        double x = columns.of(ring.id());
        double half = sizes.half(ring.id());
        return way == 0
                ? new Stands.Stand(ring.id(), x - half, x + half)
                : beside(ring.id(), ring.id(), way, TO_WEB, WEB);
    }

    private Stands.Stand beside(String id, String gear, int way, double away, double thick) {
        double near = columns.of(gear) + way * (sizes.half(gear) + away);
        double far = near + way * thick;
        return new Stands.Stand(id, Math.min(near, far), Math.max(near, far));
    }

    /** To the rear is 1: where the sun's shaft does not go on, or else where the carrier itself does. */
    int armWay(Shaft spindle) {
        double x = columns.of(spindle.along().get(0));
        Planets planets = new Planets(layout);
        List<Integer> suns = planets.meshesOf(spindle).stream()
                .flatMap(mesh -> Stream.of(mesh.first(), mesh.second()))
                .map(layout::gear)
                .filter(gear -> !planets.isRing(gear) && !planets.isPlanet(gear.id()))
                .flatMap(sun -> ways(layout.shaft(sun.carrier()), x).stream())
                .distinct()
                .toList();
        if (suns.size() == 1) {
            return -suns.get(0);
        }
        return mean(layout.shaft(spindle.carriedBy().orElseThrow()), x).orElse(1);
    }

    /** To the rear is 1; 0 where the ring stands in the case, or is tied to nothing. */
    int webWay(Gear ring) {
        Shaft shaft = layout.shaft(ring.carrier());
        double x = columns.of(ring.id());
        return shaft.held() ? 0 : mean(shaft, x).or(() -> coupled(ring, x)).orElse(0);
    }

    /** Where the sleeve is that slides over the teeth of a ring. */
    private Optional<Integer> coupled(Gear ring, double x) {
        return layout.members().stream()
                .filter(member -> member.sides().values().stream()
                        .anyMatch(side -> side instanceof Engagement.Couples couples
                                && couples.to().equals(ring.id())))
                .map(member -> columns.of(member.part()) > x ? 1 : -1)
                .findFirst();
    }

    private Optional<Integer> mean(Shaft shaft, double x) {
        double sum = ways(shaft, x).stream().mapToInt(Integer::intValue).sum();
        List<Integer> ways = ways(shaft, x);
        return ways.isEmpty() ? Optional.empty() : Optional.of(sum == 0 ? ways.get(ways.size() - 1) : sum > 0 ? 1 : -1);
    }

    /** On which sides of a place a shaft has anything, front to rear. */
    private List<Integer> ways(Shaft shaft, double x) {
        return shaft.along().stream()
                .map(id -> columns.of(id) - x)
                .filter(away -> Math.abs(away) > 1)
                .map(away -> away > 0 ? 1 : -1)
                .toList();
    }
}
