package org.layshaft.web.asking;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.kb.failure.Fault;

/** A question in one line: {@code what-turns [3-4-fork bent] 5 third}. */
final class Meant {
    private Meant() {}

    static String by(Understanding understanding) {
        if (understanding instanceof Understanding.Understood understood) {
            return by(understood.reading().question());
        }
        if (understanding instanceof Understanding.Declined declined) {
            return "declined " + declined.reason();
        }
        return understanding instanceof Understanding.Ambiguous ? "ambiguous" : "not understood";
    }

    static String by(Question question) {
        if (question instanceof Question.AtLarge atLarge) {
            return atLarge(atLarge);
        }
        List<String> line = new ArrayList<>();
        line.add(Intent.of(question).word());
        line.add(question.faults().stream().map(Fault::written).toList().toString());
        if (question instanceof Question.GearsLeft left) {
            line.addAll(left.gears());
        } else if (question instanceof Question.RatioOf ratio) {
            line.addAll(ratio.gears());
        } else if (question instanceof Question.TwoAtOnce two) {
            line.addAll(two.gears());
        } else if (question instanceof Question.PowerPath path) {
            line.add(path.gear());
        } else if (question instanceof Question.Suspects suspects) {
            line.add(suspects.evidence().written());
        } else if (question instanceof Question.WhyNot why) {
            line.add(why.gear());
        } else if (question instanceof Question.WhatTurns turns) {
            turns.gear().ifPresent(line::add);
            line.addAll(turns.parts());
        } else if (question instanceof Question.WhichWay way) {
            way.gear().ifPresent(line::add);
            line.add(way.part());
        }
        if (question instanceof Question.Fits fits) {
            line.add(fits.set());
            fits.box().ifPresent(line::add);
            fits.place().ifPresent(line::add);
        } else if (question instanceof Question.FitsHere here) {
            line.add(here.box());
            here.place().ifPresent(line::add);
        } else if (question instanceof Question.Supplied supplied) {
            line.add(supplied.set());
        } else if (question instanceof Question.OtherTyres tyres) {
            line.add(tyres.before());
            line.add(tyres.after());
        } else if (question instanceof Question.PutIn put) {
            line.add(put.set());
            line.add(put.box());
            put.place().ifPresent(line::add);
        } else if (question instanceof Question.Nearer nearer) {
            line.addAll(List.of(nearer.box(), nearer.gear(), nearer.other()));
        } else if (question instanceof Question.AxleFor axle) {
            line.add(axle.box());
            axle.gear().ifPresent(line::add);
            line.addAll(List.of(axle.rpm(), axle.kmh()));
        } else if (question instanceof Question.SpeedGear speed) {
            line.addAll(List.of(speed.box(), speed.axle()));
        } else if (question instanceof Question.Measured measured) {
            line.add(measured.teeth());
            measured.tip().ifPresent(line::add);
            measured.helix().ifPresent(line::add);
        }
        return String.join(" ", line);
    }

    /** {@code road rpm-at [5] 100km/h}: without faults, which it cannot have. */
    private static String atLarge(Question.AtLarge question) {
        String intent = Intent.of(question).word();
        if (question instanceof Question.OnTheRoad road) {
            return "%s %s %s%s".formatted(intent, road.wanted().word(), inBrackets(road.gears()), given(road.given()));
        } else if (question instanceof Question.TorqueAt torque) {
            return "%s %s%s%s"
                    .formatted(
                            intent,
                            inBrackets(torque.gears()),
                            given(torque.given()),
                            torque.part().map(part -> " " + part).orElse(""));
        } else if (question instanceof Question.Compared compared) {
            return "%s %s %s".formatted(intent, compared.other(), inBrackets(compared.gears()));
        } else if (question instanceof Question.Sounding sounding) {
            String in = sounding.gear().map(gear -> " " + gear).orElse(sounding.neutral() ? " N" : "");
            String what = sounding.given().hz().isPresent() ? intent : "frequencies";
            return what + in + given(sounding.given());
        } else if (question instanceof Question.MeshFrequency mesh) {
            return intent + given(mesh.given());
        } else if (question instanceof Question.WheelsDo wheels) {
            return intent + " " + wheels.when().word();
        } else if (question instanceof Question.Meaning meaning) {
            return intent + " " + String.join("+", meaning.terms());
        } else if (question instanceof Question.Explained explained) {
            return intent + " " + explained.subject();
        } else if (question instanceof Question.WhichGear which) {
            return "%s %s%s"
                    .formatted(
                            intent,
                            which.part().orElse("*"),
                            which.side().map(side -> " " + side).orElse(""));
        } else if (question instanceof Question.WhatFor part) {
            return intent + " " + part.part();
        } else if (question instanceof Question.TeethOf teeth) {
            return (intent + " " + String.join(" ", teeth.parts())).strip();
        }
        return intent + " []";
    }

    private static String inBrackets(List<String> names) {
        return "[" + String.join(" ", names) + "]";
    }

    private static String given(Given given) {
        List<String> all = new ArrayList<>();
        given.teeth().ifPresent(each -> all.add(Given.plain(each)));
        given.hz().ifPresent(each -> all.add(Given.plain(each) + "Hz"));
        given.speed()
                .ifPresent(each ->
                        all.add(Given.plain(each) + given.unit().orElseThrow().sign()));
        given.engineRpm().ifPresent(each -> all.add(Given.plain(each) + "rpm"));
        given.torqueNm().ifPresent(each -> all.add(Given.plain(each) + "Nm"));
        given.axle().ifPresent(each -> all.add("axle " + Given.plain(each)));
        if (!given.ratios().isEmpty()) {
            all.add("ratios");
            given.ratios().forEach(each -> all.add(Given.plain(each)));
        }
        given.tyre().ifPresent(each -> all.add("tyre " + each));
        given.wheelMm().ifPresent(each -> all.add("tyre " + Given.plain(each) + "mm"));
        return all.isEmpty() ? "" : " " + String.join(" ", all);
    }
}
