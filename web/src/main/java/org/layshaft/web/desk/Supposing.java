package org.layshaft.web.desk;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.failure.Fault;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Question.GearsLeft;
import org.layshaft.web.asking.Question.PowerPath;
import org.layshaft.web.asking.Question.RatioOf;
import org.layshaft.web.asking.Question.TwoAtOnce;
import org.layshaft.web.asking.Question.WhatHappens;
import org.layshaft.web.asking.Question.WhatTurns;
import org.layshaft.web.asking.Question.WhichWay;
import org.layshaft.web.asking.Question.WhyNot;

/** Puts the same question about a box in which more is wrong. */
public final class Supposing {
    private Supposing() {}

    /** The question with these faults after its own; a fault of the same part and mode as one of its own is left out. */
    public static Question also(Question question, List<Fault> more) {
        List<Fault> besides = besides(question, more);
        return besides.isEmpty()
                ? question
                : with(
                        question,
                        Stream.concat(question.faults().stream(), besides.stream())
                                .toList());
    }

    /** Those of the faults that the question does not suppose by itself. */
    public static List<Fault> besides(Question question, List<Fault> faults) {
        return faults.stream()
                .filter(fault -> question.faults().stream().noneMatch(own -> same(own, fault)))
                .toList();
    }

    private static boolean same(Fault one, Fault other) {
        return one.part().equals(other.part()) && one.mode().equals(other.mode());
    }

    private static Question with(Question question, List<Fault> faults) {
        String layout = question.layout();
        if (question instanceof GearsLeft asked) {
            return new GearsLeft(layout, faults, asked.gears());
        } else if (question instanceof WhatHappens) {
            return new WhatHappens(layout, faults);
        } else if (question instanceof RatioOf asked) {
            return new RatioOf(layout, faults, asked.gears());
        } else if (question instanceof PowerPath asked) {
            return new PowerPath(layout, faults, asked.gear());
        } else if (question instanceof WhatTurns asked) {
            return new WhatTurns(layout, faults, asked.gear(), asked.parts());
        } else if (question instanceof WhichWay asked) {
            return new WhichWay(layout, faults, asked.part(), asked.gear());
        } else if (question instanceof TwoAtOnce asked) {
            return new TwoAtOnce(layout, faults, asked.gears());
        }
        if (question instanceof Question.OfParts || question instanceof Question.AtLarge) {
            return question;
        }
        if (question instanceof Question.WhyNone) {
            return new Question.WhyNone(layout, faults);
        }
        if (question instanceof Question.Suspects asked) {
            return new Question.Suspects(layout, faults, asked.evidence());
        }
        return new WhyNot(layout, faults, ((WhyNot) question).gear());
    }
}
