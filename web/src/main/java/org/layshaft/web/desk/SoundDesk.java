package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.MISSING;
import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.engine.sound.Match;
import org.layshaft.engine.sound.Measured;
import org.layshaft.engine.sound.Reach;
import org.layshaft.engine.sound.Sounds;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.desk.Listened.RoadSpeed;

/** Takes in what somebody wants to know of what a box sounds, and answers it. Thread-safe. */
public final class SoundDesk {
    /** Takes the place of a tolerance that is not told. */
    private static final String USUAL_TOLERANCE = "2%";

    private static final Pattern TOLERANCE = Pattern.compile("([^%a-z]*)(%|hz)", Pattern.CASE_INSENSITIVE);

    private final Desk desk;

    public SoundDesk(Desk desk) {
        this.desk = desk;
    }

    /** Throws {@link BadInputException} with everything that cannot be used. */
    public Listened listen(SoundRequest request) {
        WrittenNumbers written = new WrittenNumbers();
        Optional<Layout> layout = layout(request, written);
        Optional<String> gear = layout.flatMap(box -> gear(box, request, written));
        Optional<Fraction> rpm = written.positive("rpm", request.rpm(), "2400");
        Optional<RoadSpeed> road = road(request, written);
        Optional<Measured> measured = measured(request, written);
        Optional<Reach> reach = reach(request, written);
        boolean speedTold = request.rpm().isPresent()
                || request.kmh().isPresent()
                || request.mph().isPresent();
        if (request.hz().isPresent() && !speedTold) {
            written.add(
                    new BadInputException(
                            MISSING,
                            "A frequency fits nothing without a speed. Give the rpm of the engine, or the road speed in km/h or mph."));
        }
        boolean speedsRead = rpm.isPresent() == request.rpm().isPresent()
                && road.isPresent()
                        == (request.kmh().isPresent() || request.mph().isPresent());
        Optional<Running> running = gear.filter(name -> speedsRead)
                .flatMap(name -> written.unlessRefused(() -> running(layout.orElseThrow(), name, rpm, road)));
        written.refuse();
        return listened(layout.orElseThrow(), running.orElseThrow(), road, measured, reach.orElseThrow());
    }

    private static Listened listened(
            Layout layout, Running running, Optional<RoadSpeed> road, Optional<Measured> measured, Reach reach) {
        List<Match> fits = measured.map(
                        heard -> running.sounds().fitting(heard, running.rpm().orElseThrow(), reach))
                .orElse(List.of());
        return new Listened(layout, running.sounds(), running.rpm(), road, measured, reach, fits);
    }

    private record Running(Sounds sounds, Optional<Fraction> rpm) {}

    private Running running(Layout layout, String gear, Optional<Fraction> rpm, Optional<RoadSpeed> road) {
        RunningSpeeds speeds = new RunningSpeeds(desk.box(layout));
        if (gear.equals(Sounds.NEUTRAL)) {
            Fraction output = speeds.outputForOneOfInput(rpm, road);
            Sounds sounds = Sounds.inNeutral(layout, desk.names(layout), output)
                    .orElseThrow(() -> new BadInputException(
                            UNFIT, "%s has no neutral: it always drives. Name a gear.".formatted(layout.name())));
            return new Running(sounds, rpm);
        }
        Box.DerivedGear derived = desk.box(layout).gears().stream()
                .filter(each -> each.name().equals(gear))
                .findFirst()
                .orElseThrow();
        return new Running(Sounds.inGear(layout, desk.names(layout), derived), speeds.rpmInGear(gear, rpm, road));
    }

    private Optional<Layout> layout(SoundRequest request, WrittenNumbers written) {
        if (request.layout().isEmpty()) {
            written.add(new BadInputException(MISSING, "The layout is missing. Give its id: curlew"));
        }
        return request.layout().flatMap(id -> written.unlessRefused(() -> desk.layout(id)));
    }

    private Optional<String> gear(Layout layout, SoundRequest request, WrittenNumbers written) {
        if (request.gear().isEmpty()) {
            written.add(new BadInputException(
                    MISSING,
                    "The gear is missing. Give N for neutral, or one of %s."
                            .formatted(String.join(
                                    ", ",
                                    desk.box(layout).gears().stream()
                                            .map(Box.DerivedGear::name)
                                            .toList()))));
            return Optional.empty();
        }
        String name = request.gear().get().strip();
        boolean neutral = List.of("n", Sounds.NEUTRAL).contains(name.toLowerCase(Locale.ROOT));
        return neutral ? Optional.of(Sounds.NEUTRAL) : written.unlessRefused(() -> desk.gear(layout, name));
    }

    private static Optional<RoadSpeed> road(SoundRequest request, WrittenNumbers written) {
        if (request.kmh().isPresent() && request.mph().isPresent()) {
            written.add(new BadInputException(
                    UNFIT,
                    "The road speed is told twice, \"%s\" in km/h and \"%s\" in mph. Give one of them."
                            .formatted(request.kmh().get(), request.mph().get())));
        }
        Optional<RoadSpeed> metric = written.positive("speed in km/h", request.kmh(), "60")
                .map(speed -> new RoadSpeed(speed, SpeedUnit.KMH));
        Optional<RoadSpeed> imperial =
                written.positive("speed in mph", request.mph(), "40").map(speed -> new RoadSpeed(speed, SpeedUnit.MPH));
        return metric.or(() -> imperial);
    }

    private static Optional<Measured> measured(SoundRequest request, WrittenNumbers written) {
        Optional<Fraction> hz = written.positive("frequency", request.hz(), "840");
        Matcher form =
                TOLERANCE.matcher(request.within().orElse(USUAL_TOLERANCE).strip());
        if (!form.matches()) {
            written.add(new BadInputException(
                    MALFORMED,
                    "The tolerance \"%s\" cannot be read. Write it in percent, like 2%%, or in Hz, like 5 Hz."
                            .formatted(request.within().orElseThrow())));
            return Optional.empty();
        }
        Optional<Fraction> size = written.number("tolerance", Optional.of(form.group(1)), "2% or 5 Hz");
        return hz.flatMap(heard -> size.flatMap(off -> written.unlessRefused(
                () -> form.group(2).equals("%") ? Measured.withinPercent(heard, off) : new Measured(heard, off))));
    }

    private static Optional<Reach> reach(SoundRequest request, WrittenNumbers written) {
        Optional<Integer> harmonics = written.whole("number of harmonics", request.harmonics(), "4");
        Optional<Integer> sidebands = written.whole("number of sidebands", request.sidebands(), "2");
        return written.unlessRefused(
                () -> new Reach(harmonics.orElse(Reach.USUAL.harmonics()), sidebands.orElse(Reach.USUAL.sidebands())));
    }
}
