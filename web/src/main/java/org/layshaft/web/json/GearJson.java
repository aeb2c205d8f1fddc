package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.FaultNaming;

/**
 * What becomes of one gear.
 *
 * @param verdict {@code works}, {@code works-with-notice}, {@code uncertain}, {@code lost} or {@code locks}
 * @param direction {@code forward} or {@code reverse}, when all is sound
 * @param ratio input turns for one turn of the output, when all is sound
 * @param path from input to output; empty unless it drives in every possibility
 * @param possibilities the ways things may be; more than one only where something of a fault is not known
 */
public record GearJson(
        String gear,
        String verdict,
        String direction,
        NumberJson ratio,
        List<PathJson> path,
        List<NoticeJson> notices,
        List<ReasonJson> because,
        List<PossibilityJson> possibilities) {

    /** One body on the way, with its turns for one turn of the input. */
    public record PathJson(String part, String name, NumberJson speed) {}

    static GearJson of(GearVerdict gear, Names names, FaultNaming words) {
        return new GearJson(
                gear.gear(),
                gear.verdict().word(),
                gear.direction().word(),
                NumberJson.of(gear.ratio()),
                gear.path().stream()
                        .map(step -> new PathJson(step.part(), names.of(step.part()), NumberJson.of(step.speed())))
                        .toList(),
                NoticeJson.all(gear.notices()),
                ReasonJson.all(gear.because()),
                PossibilityJson.all(gear.possibilities(), words));
    }
}
