package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.failure.Fault;
import org.layshaft.web.asking.Intent;
import org.layshaft.web.asking.Question;

/** The questions that a fit comes to: one, where all is said; several, where something is left open. */
final class Readings {
    private final BoxWords words;
    private final String layout;

    Readings(BoxWords words) {
        this.words = words;
        this.layout = words.layout().id();
    }

    /** Every question that these words may be. */
    List<Question> of(Fit fit, List<List<Fault>> faults) {
        List<Question> questions = new ArrayList<>();
        List<String> gears = fit.gears().stream()
                .flatMap(mention -> mention.gear().stream())
                .distinct()
                .toList();
        List<String> parts = fit.part().map(Mention::parts).orElse(List.of());
        faults.forEach(each -> questions.addAll(of(fit.intent(), each, gears, parts)));
        return questions.stream().distinct().toList();
    }

    /** The same for gears and parts named outright. */
    List<Question> of(Intent intent, List<Fault> faults, List<String> gears, List<String> parts) {
        Optional<String> gear = gears.stream().findFirst();
        return switch (intent) {
            case GEARS_LEFT -> List.of(new Question.GearsLeft(layout, faults, gears));
            // those are heard by listeners of their own
            case SUSPECTS,
                    FITS,
                    FITS_HERE,
                    SUPPLIED,
                    PUT_IN,
                    NEARER,
                    AXLE_FOR,
                    SPEED_GEAR,
                    MEASURED,
                    OTHER_TYRES,
                    ROAD,
                    TORQUE,
                    COMPARE,
                    FREQUENCY,
                    MESH_FREQUENCY,
                    DIFFERENTIAL,
                    TOWED,
                    DEFINE,
                    EXPLAIN,
                    WHICH_GEAR,
                    WHAT_FOR,
                    TEETH -> List.of();
            case WHY_NONE -> List.of(new Question.WhyNone(layout, faults));
            case WHAT_HAPPENS -> List.of(new Question.WhatHappens(layout, faults));
            case RATIO -> List.of(new Question.RatioOf(layout, faults, gears));
            case TWO_AT_ONCE ->
                List.of(new Question.TwoAtOnce(layout, faults, gears.size() < 2 ? List.of() : gears.subList(0, 2)));
            case POWER_PATH ->
                asked(gears).stream()
                        .<Question>map(each -> new Question.PowerPath(layout, faults, each))
                        .toList();
            case WHY_NOT ->
                asked(gears).stream()
                        .<Question>map(each -> new Question.WhyNot(layout, faults, each))
                        .toList();
            case WHICH_WAY ->
                parts.stream()
                        .<Question>map(part -> new Question.WhichWay(layout, faults, part, gear))
                        .toList();
            case WHAT_TURNS ->
                parts.size() < 2
                        ? List.of(new Question.WhatTurns(layout, faults, gear, parts))
                        : parts.stream()
                                .<Question>map(part -> new Question.WhatTurns(layout, faults, gear, List.of(part)))
                                .toList();
        };
    }

    private List<String> asked(List<String> gears) {
        return gears.isEmpty()
                ? words.box().gears().stream().map(Box.DerivedGear::name).toList()
                : gears.subList(0, 1);
    }
}
