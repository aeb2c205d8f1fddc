package org.layshaft.web.asking;

import org.layshaft.engine.words.Names;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/** A question about parts in our words, such as would be understood again. */
public final class PartsRestating {
    private final KnowledgeBase knowledge;

    public PartsRestating(KnowledgeBase knowledge) {
        this.knowledge = knowledge;
    }

    public String said(Question.OfParts question) {
        String asked = nameOf(question.layout());
        if (question instanceof Question.Fits fits) {
            String where = fits.box().map(box -> "in " + nameOf(box)).orElse("in any box, asked at " + asked);
            return "whether %s fits %s%s"
                    .formatted(
                            named(fits.set()), where, fits.place().map(this::at).orElse(""));
        } else if (question instanceof Question.FitsHere here) {
            return "what fits in %s%s"
                    .formatted(nameOf(here.box()), here.place().map(this::at).orElse(""));
        } else if (question instanceof Question.Supplied supplied) {
            return "what %s is superseded by, asked at %s".formatted(named(supplied.set()), asked);
        }
        if (question instanceof Question.OtherTyres tyres) {
            return tyres(asked, tyres);
        }
        return question instanceof Question.Measured measured ? measured(asked, measured) : wished(question);
    }

    private static String tyres(String asked, Question.OtherTyres tyres) {
        return "how far out the speedometer of %s is with %s instead of %s"
                .formatted(asked, tyres.after(), tyres.before());
    }

    private static String measured(String asked, Question.Measured measured) {
        return "which gear has %s teeth%s%s, asked at %s"
                .formatted(
                        measured.teeth(),
                        measured.tip()
                                .map(mm -> ", tip diameter %s mm".formatted(mm))
                                .orElse(""),
                        measured.helix()
                                .map(deg -> ", helix angle %s degrees".formatted(deg))
                                .orElse(""),
                        asked);
    }

    private String wished(Question.OfParts question) {
        if (question instanceof Question.PutIn put) {
            return "what %s changes in %s%s"
                    .formatted(
                            named(put.set()),
                            nameOf(put.box()),
                            put.place().map(this::at).orElse(""));
        } else if (question instanceof Question.Nearer nearer) {
            return "which set brings %s nearer %s in %s"
                    .formatted(Names.gearName(nearer.gear()), Names.gearName(nearer.other()), nameOf(nearer.box()));
        } else if (question instanceof Question.AxleFor axle) {
            return "which axle gives %s rpm at %s km/h%s in %s"
                    .formatted(
                            axle.rpm(),
                            axle.kmh(),
                            axle.gear()
                                    .map(gear -> " in " + Names.gearName(gear))
                                    .orElse(""),
                            nameOf(axle.box()));
        }
        Question.SpeedGear speed = (Question.SpeedGear) question;
        return "which speedometer gear suits an axle of %s in %s".formatted(speed.axle(), nameOf(speed.box()));
    }

    /** {@code SM-1152, Curlew third pair, 37/34,}; the number alone where it has no name of its own. */
    private String named(String number) {
        return knowledge
                .catalogue()
                .set(number)
                .map(PartSet::name)
                .filter(name -> !name.isEmpty() && !name.equals(number))
                .map(name -> "%s, %s,".formatted(number, name))
                .orElse(number);
    }

    private String at(String place) {
        return " at "
                + knowledge.layouts().values().stream()
                        .flatMap(layout -> layout.find(Part.class, place).stream())
                        .map(Part::name)
                        .findFirst()
                        .orElse(place);
    }

    private String nameOf(String box) {
        Build build = knowledge.catalogue().builds().get(box);
        return knowledge.layout(box).map(layout -> layout.name()).orElseGet(() -> build == null ? box : build.name());
    }
}
