package org.layshaft.web.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.pack.KnowledgeBase;

/** A question in our words, such as would be understood again: {@code which gears still drive in Curlew with ...}. */
public final class Restating {
    private final Box box;
    private final FaultNaming faultWords;
    private final Names names;
    private final PartsRestating ofParts;
    private final RestatingAtLarge atLarge;

    public Restating(KnowledgeBase knowledge, Box box) {
        this.box = box;
        this.names = new Names(box.layout(), knowledge.words());
        this.faultWords = new FaultNaming(knowledge, box);
        this.ofParts = new PartsRestating(knowledge);
        this.atLarge = new RestatingAtLarge(knowledge, names);
    }

    public String said(Question question) {
        if (question instanceof Question.OfParts parts) {
            return ofParts.said(parts);
        }
        if (question instanceof Question.AtLarge asked) {
            return atLarge.said(asked, box.layout().name());
        }
        if (question instanceof Question.Suspects suspects) {
            return "what may be wrong in %s: %s".formatted(box.layout().name(), noticed(suspects.evidence()));
        }
        String faults = question.faults().isEmpty() ? "" : " with " + faultWords.said(question.faults());
        return asked(question) + " in " + box.layout().name() + faults;
    }

    private String noticed(Evidence evidence) {
        return Stream.concat(
                        evidence.observations().stream().map(this::noticed),
                        evidence.afterWork() ? Stream.of("after earlier work") : Stream.of())
                .collect(Collectors.joining("; "));
    }

    private String noticed(Observation observation) {
        String when = observation.situation().map(names::condition).orElse("");
        boolean ofGear = when.contains("the gear");
        String gears = Saying.gears(observation.gears());
        List<String> words = new ArrayList<>();
        words.add((observation.seen() ? "" : "not ") + names.notice(observation.notice()));
        words.add(ofGear && !gears.isEmpty() ? when.replace("the gear", gears) : when);
        words.add(ofGear || gears.isEmpty() ? "" : "in " + gears);
        words.add(observation.heat().map(names::heat).orElse(""));
        return words.stream().filter(each -> !each.isEmpty()).collect(Collectors.joining(" "));
    }

    private String asked(Question question) {
        if (question instanceof Question.GearsLeft left) {
            return left.gears().isEmpty()
                    ? "which gears still drive"
                    : "whether " + Saying.gears(left.gears()) + " still " + verb(left.gears(), "drive");
        } else if (question instanceof Question.WhatHappens) {
            return "what happens";
        } else if (question instanceof Question.RatioOf ratio) {
            return ratio.gears().isEmpty()
                    ? "the ratios of all gears"
                    : "the " + (ratio.gears().size() > 1 ? "ratios" : "ratio") + " of " + Saying.gears(ratio.gears());
        } else if (question instanceof Question.PowerPath path) {
            return "the path of the power in " + Names.gearName(path.gear());
        } else if (question instanceof Question.WhatTurns turns) {
            return turns.parts().isEmpty()
                    ? "what turns in " + gear(turns.gear())
                    : "whether %s %s in %s"
                            .formatted(names.list(turns.parts()), verb(turns.parts(), "turn"), gear(turns.gear()));
        } else if (question instanceof Question.WhichWay way) {
            return "which way %s turns in %s".formatted(names.the(way.part()), gear(way.gear()));
        } else if (question instanceof Question.WhyNone) {
            return "why no gear drives";
        } else if (question instanceof Question.TwoAtOnce two) {
            String gears = two.gears().isEmpty() ? "two gears" : Saying.gears(two.gears());
            return "whether " + gears + " can be engaged at once";
        }
        return "why " + Names.gearName(((Question.WhyNot) question).gear()) + " works or does not";
    }

    private static String gear(Optional<String> gear) {
        return gear.map(Names::gearName).orElse("neutral");
    }

    private static String verb(List<String> subjects, String verb) {
        return subjects.size() == 1 ? verb + "s" : verb;
    }
}
