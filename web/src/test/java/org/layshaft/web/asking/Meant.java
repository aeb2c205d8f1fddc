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
        return understanding instanceof Understanding.Ambiguous ? "ambiguous" : "not understood";
    }

    static String by(Question question) {
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
}
