package org.layshaft.web.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Match;
import org.layshaft.engine.sound.Measured;
import org.layshaft.engine.sound.Source;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.Listened;

/**
 * What a box sounds in one gear.
 *
 * @param layout id of the layout
 * @param gear name of the gear, or {@code neutral}
 * @param rpm turns of the input a minute; null where no speed was told
 * @param roadSpeed null where none was told
 * @param hz the frequency that was measured; null where none was
 * @param withinHz how far from it something may lie and still fits; null where none was measured
 * @param fits what fits, the likeliest first
 * @param sources everything that repeats, family by family, in each by rising order
 * @param untold what else may be heard and cannot be told, and why
 */
public record SoundJson(
        String layout,
        String gear,
        NumberJson rpm,
        RoadSpeedJson roadSpeed,
        BigDecimal hz,
        BigDecimal withinHz,
        int harmonics,
        int sidebands,
        List<FitJson> fits,
        List<SourceJson> sources,
        List<String> untold) {
    private static final int DECIMALS = 3;

    /** @param in {@code km/h} or {@code mph} */
    public record RoadSpeedJson(BigDecimal value, String in) {}

    /**
     * One thing that repeats.
     *
     * @param kind {@code mesh}, {@code outer-race}
     * @param parts ids of the parts that it is about, the chief one first
     * @param what what repeats, in words
     * @param how how its order is computed, in words
     * @param hz at the rpm; null where no speed was told
     * @param loaded whether power goes through it
     */
    public record SourceJson(
            String kind, List<String> parts, String what, String how, OrderJson order, BigDecimal hz, boolean loaded) {}

    /**
     * Something that fits.
     *
     * @param rank the same for those that nothing sets apart
     * @param source what repeats
     * @param harmonic which multiple of it; 1 for the plain order
     * @param sideband null for the multiple itself
     * @param says which harmonic or sideband, in words; null for the plain order
     * @param order with the sideband
     * @param offPercent in percent of what was measured; less than 0 below it
     */
    public record FitJson(
            int rank,
            SourceJson source,
            int harmonic,
            SidebandJson sideband,
            String says,
            OrderJson order,
            BigDecimal hz,
            BigDecimal offPercent) {}

    /**
     * A line beside a harmonic.
     *
     * @param part id of the part whose turning it follows
     * @param what that turning, in words
     * @param times how many steps away; less than 0 below it
     */
    public record SidebandJson(String part, String what, int times) {}

    public static SoundJson of(Listened listened) {
        Optional<Fraction> rpm = listened.inputRpm();
        return new SoundJson(
                listened.layout().id(),
                listened.sounds().gear(),
                rpm.map(NumberJson::of).orElse(null),
                listened.road()
                        .map(road -> new RoadSpeedJson(
                                rounded(road.value()), road.unit().sign()))
                        .orElse(null),
                listened.measured().map(Measured::hz).map(SoundJson::rounded).orElse(null),
                listened.measured()
                        .map(Measured::toleranceHz)
                        .map(SoundJson::rounded)
                        .orElse(null),
                listened.reach().harmonics(),
                listened.reach().sidebands(),
                listened.fits().stream().map(match -> fit(match, rpm)).toList(),
                listened.sounds().sources().stream()
                        .map(source -> source(source, rpm))
                        .toList(),
                listened.sounds().untold());
    }

    private static SourceJson source(Source source, Optional<Fraction> rpm) {
        return new SourceJson(
                source.kind().word(),
                source.parts(),
                source.what(),
                source.how(),
                OrderJson.of(source.order()),
                rpm.map(source.order()::hz).map(SoundJson::rounded).orElse(null),
                source.loaded());
    }

    private static FitJson fit(Match match, Optional<Fraction> rpm) {
        return new FitJson(
                match.rank(),
                source(match.source(), rpm),
                match.harmonic(),
                match.sideband()
                        .map(band ->
                                new SidebandJson(band.beat().part(), band.beat().what(), band.times()))
                        .orElse(null),
                match.says().orElse(null),
                OrderJson.of(match.order()),
                rounded(match.hz()),
                rounded(match.offPercent()));
    }

    private static BigDecimal rounded(Fraction number) {
        return Decimals.rounded(number, DECIMALS);
    }
}
