package org.layshaft.engine.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Match.Sideband;

/**
 * Finds what lies within the tolerance of a measured frequency, and ranks it: plain orders before harmonics, harmonics
 * before sidebands; lower before higher; what carries power before what only turns; then the nearest.
 */
record Matching(Measured measured, Fraction inputRpm, Reach reach) {
    private static final Comparator<Match> LIKELIEST_FIRST = Comparator.comparingInt(Matching::band)
            .thenComparingInt(Matching::steps)
            .thenComparing(match -> !match.source().loaded())
            .thenComparing(match -> match.offPercent().absolute());

    List<Match> among(List<Source> sources) {
        List<Match> unranked = sources.stream()
                .flatMap(this::of)
                .filter(match -> measured.isFittedBy(match.hz()))
                .sorted(LIKELIEST_FIRST)
                .toList();
        List<Match> ranked = new ArrayList<>();
        for (int place = 0; place < unranked.size(); place++) {
            Match match = unranked.get(place);
            boolean tied = place > 0 && LIKELIEST_FIRST.compare(unranked.get(place - 1), match) == 0;
            ranked.add(at(tied ? ranked.get(place - 1).rank() : place + 1, match));
        }
        return List.copyOf(ranked);
    }

    private Stream<Match> of(Source source) {
        return IntStream.rangeClosed(1, reach.harmonics()).boxed().flatMap(harmonic -> {
            Order centre = source.order().times(harmonic);
            Stream<Match> bands = source.beats().stream()
                    .flatMap(beat -> IntStream.rangeClosed(-reach.sidebands(), reach.sidebands())
                            .filter(times -> times != 0)
                            .mapToObj(times -> match(
                                    source,
                                    harmonic,
                                    Optional.of(new Sideband(beat, times)),
                                    centre.beside(beat.order(), times))));
            return Stream.concat(Stream.of(match(source, harmonic, Optional.empty(), centre)), bands);
        });
    }

    private Match match(Source source, int harmonic, Optional<Sideband> sideband, Order order) {
        Fraction hz = order.hz(inputRpm);
        return new Match(0, source, harmonic, sideband, order, hz, measured.offPercent(hz));
    }

    private static Match at(int rank, Match match) {
        return new Match(
                rank,
                match.source(),
                match.harmonic(),
                match.sideband(),
                match.order(),
                match.hz(),
                match.offPercent());
    }

    private static int band(Match match) {
        return match.sideband().isPresent() ? 2 : match.harmonic() > 1 ? 1 : 0;
    }

    private static int steps(Match match) {
        return match.harmonic()
                + match.sideband().map(band -> Math.abs(band.times())).orElse(0);
    }
}
