package org.layshaft.web.asking;

import java.util.List;
import java.util.stream.Collectors;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.words.Phrase;

/** Questions at large in our words, such as would be understood again. */
final class RestatingAtLarge {
    private final KnowledgeBase knowledge;
    private final Names names;

    RestatingAtLarge(KnowledgeBase knowledge, Names names) {
        this.knowledge = knowledge;
        this.names = names;
    }

    /** @param box the name of the layout */
    String said(Question.AtLarge question, String box) {
        if (question instanceof Question.Compared compared) {
            return "how %s compares with %s%s".formatted(box, nameOf(compared.other()), in(compared.gears()));
        }
        return asked(question) + " in " + box;
    }

    private String asked(Question.AtLarge question) {
        if (question instanceof Question.OnTheRoad road) {
            boolean unit =
                    road.given().unit().isPresent() && road.given().speed().isEmpty();
            return road.wanted().says()
                    + (unit ? " in " + road.given().unit().get().sign() : "")
                    + in(road.gears())
                    + road.given().says();
        } else if (question instanceof Question.TorqueAt torque) {
            return "the torque at %s%s%s"
                    .formatted(
                            torque.part().map(names::the).orElse("the output"),
                            in(torque.gears()),
                            torque.given().says());
        } else if (question instanceof Question.Sounding sounding) {
            String in = sounding.gear()
                    .map(gear -> " in " + Names.gearName(gear))
                    .orElse(sounding.neutral() ? " in neutral" : "");
            return sounding.given().hz().isPresent()
                    ? "what makes a sound" + sounding.given().says() + in
                    : "which frequencies to expect" + in + sounding.given().says();
        } else if (question instanceof Question.MeshFrequency mesh) {
            return "the mesh frequency" + mesh.given().says();
        } else if (question instanceof Question.WheelsDo wheels) {
            return "what the differential does when " + wheels.when().says();
        } else if (question instanceof Question.Towed) {
            return "what turns when it is towed in neutral with the engine off";
        }
        return ofWords(question);
    }

    private String ofWords(Question.AtLarge question) {
        if (question instanceof Question.Meaning meaning) {
            return "the meaning of " + Names.joined(meaning.terms());
        } else if (question instanceof Question.Explained explained) {
            return knowledge.words().phrases().stream()
                    .filter(phrase -> phrase.intent().equals(Intent.EXPLAIN.word()))
                    .filter(phrase -> phrase.name().equals(explained.subject()))
                    .map(Phrase::examples)
                    .flatMap(List::stream)
                    .findFirst()
                    .orElse(explained.subject());
        } else if (question instanceof Question.WhichGear which) {
            return "which gear it is with %s%s"
                    .formatted(
                            which.part().map(names::the).orElse("a sleeve"),
                            which.side().map(side -> " to the " + side).orElse(" engages"));
        } else if (question instanceof Question.WhatFor part) {
            return "what %s is for".formatted(names.the(part.part()));
        }
        Question.TeethOf teeth = (Question.TeethOf) question;
        return teeth.parts().isEmpty()
                ? "how many teeth all gears have"
                : "how many teeth "
                        + teeth.parts().stream().map(names::the).collect(Collectors.joining(" and "))
                        + " has";
    }

    private static String in(List<String> gears) {
        return gears.isEmpty() ? "" : " in " + Saying.gears(gears);
    }

    private String nameOf(String layout) {
        return knowledge.layout(layout).map(each -> each.name()).orElse(layout);
    }
}
