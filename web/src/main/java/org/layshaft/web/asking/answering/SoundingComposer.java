package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.sound.Match;
import org.layshaft.engine.sound.Measured;
import org.layshaft.engine.sound.Reach;
import org.layshaft.engine.sound.Sounds;
import org.layshaft.engine.sound.Source;
import org.layshaft.engine.sound.SourceKind.Family;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Road;
import org.layshaft.web.asking.Given;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** What sounds at a frequency, or at which frequencies it sounds. */
final class SoundingComposer {
    private static final Fraction TOLERANCE_PERCENT = Fraction.of(2);
    private static final int FIRST = 5;
    private static final int MOST_LISTED = 8;
    private static final Fraction A_MINUTE = Fraction.of(60);

    private final Facts facts;

    SoundingComposer(Facts facts) {
        this.facts = facts;
    }

    Composed compose(Question.Sounding question) {
        Given given = question.given();
        question.gear().ifPresent(facts::gear);
        if (question.gear().isEmpty() && !question.neutral()) {
            return Composed.of(List.of(
                    "A frequency tells nothing without the gear and the speed at which it is heard: teeth meet as often as the shaft turns. Ask again with both: \"%s Hz in third at 2000 rpm\"."
                            .formatted(given.hz().map(hz -> Saying.plain(hz, 1)).orElse("320"))));
        }
        Sounds sounds = sounds(question);
        List<String> says = new ArrayList<>();
        Optional<Fraction> rpm = rpm(question, says);
        String where = question.gear().map(gear -> "in " + Names.gearName(gear)).orElse("in neutral");
        if (rpm.isEmpty()) {
            unknownSpeed(sounds, given, where, says);
        } else if (given.hz().isPresent()) {
            fits(sounds, given.hz().get(), rpm.get(), where, says);
        } else {
            all(sounds, rpm.get(), where, says);
        }
        Composed composed = Composed.of(says);
        return question.gear()
                .map(facts::gear)
                .map(composed::in)
                .orElseGet(() -> composed.in(facts.whatIf().neutral()));
    }

    private Sounds sounds(Question.Sounding question) {
        return question.gear()
                .map(gear -> Sounds.inGear(facts.box().layout(), facts.names(), facts.soundGear(gear)))
                .or(() -> Sounds.inNeutral(facts.box().layout(), facts.names(), Fraction.ZERO))
                .orElseThrow(() -> new UnanswerableException("%s has no neutral: it always drives. Name a gear."
                        .formatted(facts.box().layout().name())));
    }

    private Optional<Fraction> rpm(Question.Sounding question, List<String> says) {
        Given given = question.given();
        if (given.engineRpm().isPresent()
                || given.kmh().isEmpty()
                || question.gear().isEmpty()) {
            return given.engineRpm();
        }
        try {
            Telling<Fraction> rpm = Vehicle.of(
                            facts.box(), facts.box().layout().road().orElse(Road.NOTHING))
                    .speeds()
                    .rpmAt(question.gear().get(), given.kmh().get());
            rpm.value()
                    .ifPresent(each -> says.add(
                            "At that road speed the engine turns at %s rpm.".formatted(Saying.plain(each, 0))));
            rpm.whyNot().ifPresent(why -> says.add("How fast the engine turns at that road speed %s.".formatted(why)));
            return rpm.value();
        } catch (ImpossibleFactsException impossible) {
            throw new UnanswerableException(impossible.getMessage());
        }
    }

    private void fits(Sounds sounds, Fraction hz, Fraction rpm, String where, List<String> says) {
        List<Match> fits = sounds.fitting(Measured.withinPercent(hz, TOLERANCE_PERCENT), rpm, Reach.USUAL);
        String what = "%s Hz %s at %s rpm".formatted(Saying.plain(hz, 1), where, Saying.plain(rpm, 0));
        if (fits.isEmpty()) {
            says.add("Nothing in the box that can be told fits %s, to 2 per cent, up to the fourth harmonic."
                    .formatted(what));
            says.add(
                    "Hold the speed to that at which it was measured; what turns with another shaft, such as the engine or a wheel, is not in the box.");
        } else {
            says.add("These fit %s, to 2 per cent, the likeliest first:".formatted(what));
            fits.stream()
                    .limit(FIRST)
                    .forEach(match -> says.add("%d. %s%s, %s Hz; %s."
                            .formatted(
                                    match.rank(),
                                    Saying.sentence(match.says()
                                                    .map(each -> each + ", of this: ")
                                                    .orElse("")
                                            + match.source().what()),
                                    "",
                                    Saying.plain(match.hz(), 1),
                                    match.source().loaded() ? "it carries power" : "it only turns")));
        }
        sounds.untold().stream().limit(1).forEach(untold -> says.add(Standing.sentence(untold)));
    }

    private void all(Sounds sounds, Fraction rpm, String where, List<String> says) {
        says.add("%s at %s rpm these repeat, those that carry power first:"
                .formatted(Saying.sentence(where), Saying.plain(rpm, 0)));
        teeth(sounds).stream()
                .limit(MOST_LISTED)
                .forEach(source -> says.add("%s: %s Hz."
                        .formatted(
                                Saying.sentence(source.what()),
                                Saying.plain(source.order().hz(rpm), 1))));
    }

    private void unknownSpeed(Sounds sounds, Given given, String where, List<String> says) {
        says.add("A frequency fits nothing without a speed: give the rpm of the engine, or the road speed.");
        given.hz()
                .ifPresent(hz -> teeth(sounds).stream()
                        .filter(Source::loaded)
                        .limit(FIRST)
                        .forEach(source -> says.add("%s Hz %s would be this at %s rpm: %s."
                                .formatted(
                                        Saying.plain(hz, 1),
                                        where,
                                        Saying.plain(hz.over(source.order().hz(Fraction.ONE)), 0),
                                        source.what()))));
    }

    private static List<Source> teeth(Sounds sounds) {
        return sounds.sources().stream()
                .filter(source -> source.kind().family() == Family.TEETH)
                .sorted(Comparator.comparing((Source source) -> !source.loaded()))
                .toList();
    }

    /** Of any gear that has so many teeth and turns so fast. */
    static Composed mesh(Question.MeshFrequency question) {
        Fraction teeth = question.given().teeth().orElseThrow();
        Fraction rpm = question.given()
                .engineRpm()
                .orElseThrow(
                        () -> new UnanswerableException("Its speed is missing. Give it: \"30 teeth at 1800 rpm\"."));
        Fraction turns = rpm.over(A_MINUTE);
        return Composed.of(
                List.of(
                        "Its teeth meet %s times a second: %s Hz, %s teeth times %s turns a minute over 60, and so do those of the gear in mesh with it."
                                .formatted(
                                        Saying.plain(teeth.times(turns), 2),
                                        Saying.plain(teeth.times(turns), 2),
                                        Saying.plain(teeth, 0),
                                        Saying.plain(rpm, 1)),
                        "Its shaft turns %s times a second, %s Hz: what comes once a turn, and sidebands of the mesh, are that far apart."
                                .formatted(Saying.plain(turns, 2), Saying.plain(turns, 2)),
                        "A bearing on that shaft repeats a few times a turn, far below the mesh; how often follows from its balls or rollers, their size and its pitch circle, which are missing here."));
    }
}
