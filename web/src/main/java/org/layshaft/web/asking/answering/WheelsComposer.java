package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.LimitedSlip;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** What the differential does, and what turns while the vehicle is towed. */
final class WheelsComposer {
    private static final Fraction TWO = Fraction.of(2);

    private static final String CAUTION =
            "Lift wheels only with the vehicle on stands, and never run it in gear like that: an open differential throws all speed onto the wheel that is free, a limited-slip one can drive it off the stands.";

    private final Facts facts;
    private final Layout layout;
    private final List<String> says = new ArrayList<>();

    WheelsComposer(Facts facts) {
        this.facts = facts;
        this.layout = facts.box().layout();
    }

    Composed compose(Question.WheelsDo question) {
        Optional<Differential> differential = layout.finalDrives().stream().findFirst();
        Optional<LimitedSlip> slip = differential.flatMap(Differential::limitedSlip);
        says.add(differential
                .map(each -> "%s drives the wheels through %s, which is %s."
                        .formatted(
                                layout.name(),
                                facts.names().the(each.id()),
                                slip.isPresent() ? "a limited-slip one" : "open"))
                .orElse(
                        "%s has no differential between wheels; that is in the axle behind it. This holds for an open one."
                                .formatted(layout.name())));
        switch (question.when()) {
            case ONE_SLIPS -> oneSlips(differential, slip);
            case JACKED_UP -> jackedUp(slip);
            case IN_A_BEND -> inABend(slip);
            case SHARES -> shares(slip);
        }
        return Composed.of(says)
                .aboutParts(differential.map(each -> List.of(each.id())).orElse(List.of()));
    }

    private void oneSlips(Optional<Differential> differential, Optional<LimitedSlip> slip) {
        if (slip.isPresent()) {
            says.add(resists(slip.get()));
            says.add(
                    "So the wheel that grips gets more than the one that slips, up to that limit; beyond it the slipping one spins.");
        } else {
            says.add(
                    "Its pinions press on both side gears alike, so both wheels get the same torque, whatever speed they have. The wheel that grips gets no more than the slipping one can hold: with next to none on ice, next to none on tarmac, and the vehicle stands.");
        }
        says.add(
                "While one wheel stands the other turns twice as fast as the ring gear, for the two speeds always add up to twice that of the ring gear."
                        + differential.flatMap(this::example).orElse(""));
        says.add("The speedometer then shows the speed of the ring gear, half that of the spinning wheel.");
    }

    /** With the numbers of first gear. */
    private Optional<String> example(Differential differential) {
        Optional<GearVerdict> first = facts.whatIf().gears().stream().findFirst();
        return first.flatMap(gear -> gear.motion().speedOf(differential.id()).map(speed -> {
            Fraction each = speed.absolute();
            return " In %s, straight ahead, both make %s for one of the engine; with one standing the other makes %s."
                    .formatted(Names.gearName(gear.gear()), Saying.turns(each), Saying.turns(each.times(TWO)));
        }));
    }

    private void jackedUp(Optional<LimitedSlip> slip) {
        says.add(
                "With a gear in and the engine standing, the ring gear is held by the gearbox. The two wheel speeds add up to twice that of the ring gear, which is nought: the other wheel turns as fast the opposite way. That is how it should be, and does not mean that the gearbox is locked.");
        slip.ifPresent(each ->
                says.add(resists(each) + " So by hand it turns hard, or both wheels want to turn the same way."));
        says.add(
                "In neutral the ring gear is free too: the other wheel then turns either way or stands, whichever takes least effort.");
        says.add(CAUTION);
    }

    private void inABend(Optional<LimitedSlip> slip) {
        says.add(
                "The outer wheel has the longer way. It turns as much faster than the ring gear as the inner one turns slower; their mean is the ring gear's speed.");
        says.add(slip.map(this::resists)
                .orElse("The torque stays shared equally: neither wheel gets more for being faster."));
        says.add(
                "The pinions turn on their cross shaft only while the sides turn unlike; straight ahead the whole differential turns as one.");
    }

    private void shares(Optional<LimitedSlip> slip) {
        says.add(
                "An open bevel differential gives both sides the same torque at all times, whatever their speeds: the pinion is a beam with equal arms. More speed is not more torque.");
        says.add("Power is torque times speed, so the faster wheel takes more of the power, and the slower one less.");
        slip.ifPresent(each -> says.add(resists(each) + " Up to that limit the slower wheel gets more than half."));
    }

    private String resists(LimitedSlip slip) {
        List<String> how = Stream.concat(
                        slip.preloadNm().isPresent()
                                ? Stream.of("its clutches hold %s N·m between the sides with nothing driving"
                                        .formatted(slip.preloadNm().getAsDouble()))
                                : Stream.empty(),
                        slip.biasRatio().isPresent()
                                ? Stream.of("its slower side can get %s times the torque of the faster"
                                        .formatted(slip.biasRatio().getAsDouble()))
                                : Stream.empty())
                .toList();
        return how.isEmpty()
                ? "It resists a difference of speed; by how much is not stated."
                : "It resists a difference of speed: " + Names.joined(how) + ".";
    }

    /**
     * Towed in neutral, what stands in the solution with the output held is tied to the output, and turns with it; what turns
     * there is tied to the input, which the stopped engine holds.
     */
    Composed towed() {
        Motion neutral = facts.whatIf().neutral().motion();
        if (neutral.outcome() != Motion.Outcome.NEUTRAL) {
            return Composed.of(List.of(
                    "%s has no neutral in which input and output are free of each other: towed, it turns all that its wheels drive."
                            .formatted(layout.name())));
        }
        List<String> shafts = layout.all(Shaft.class)
                .filter(shaft -> !shaft.held() && shaft.carriedBy().isEmpty())
                .map(Shaft::id)
                .toList();
        List<String> rolling = shafts.stream()
                .filter(shaft -> neutral.speedOf(shaft).filter(Fraction::isZero).isPresent())
                .toList();
        List<String> standing = shafts.stream()
                .filter(shaft ->
                        neutral.speedOf(shaft).filter(speed -> !speed.isZero()).isPresent())
                .toList();
        if (!rolling.isEmpty()) {
            says.add("Towed in neutral with the engine stopped, the wheels turn %s, with all that is fixed on %s."
                    .formatted(facts.names().list(rolling), rolling.size() == 1 ? "it" : "them"));
        }
        if (!standing.isEmpty()) {
            says.add("%s %s: no sleeve ties %s to what the wheels turn."
                    .formatted(
                            Saying.sentence(facts.names().list(standing)),
                            standing.size() == 1 ? "stands" : "stand",
                            standing.size() == 1 ? "it" : "them"));
        }
        long free = layout.all(Gear.class)
                .filter(gear -> gear.isFree() && rolling.contains(gear.carrier()))
                .count();
        if (free > 0) {
            says.add(
                    "The %d free gears on what turns are held by the gears that they mesh with: the shaft turns inside them, on their needles."
                            .formatted(free));
        }
        if (!layout.finalDrives().isEmpty()) {
            says.add(
                    "The differential turns the same way as when driving forward; the ring gear drives its pinion, so only the coast flanks touch.");
        }
        says.add(
                "Oil is thrown up by what turns, so whether the bearings and needles get enough when only a part of it does, and how far and fast it may be towed, stands in the maker's data. Otherwise lift the driven wheels or part the propeller shaft.");
        return Composed.of(says).in(facts.whatIf().neutral()).aboutParts(rolling);
    }
}
