package org.layshaft.web.json;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.FitAnswer;
import org.layshaft.web.desk.FitAnswer.Supplied;
import org.layshaft.web.desk.SupplyWording;

/**
 * What the parts counter says.
 *
 * @param set null where every set was asked about
 * @param boxes the boxes asked about
 * @param serial null where none was given
 * @param place id of the place asked about; null for wherever something can stand
 * @param servings everywhere that it could stand, best first
 * @param thorough so many of the first were tried with as many further units as ever, and are given with every check; the
 *     others were tried with one, and are given with what does not hold
 * @param supplies what is supplied today: of the set first, then of what else has something to be said
 */
public record FitJson(
        SetJson set,
        List<BuiltBoxJson> boxes,
        Integer serial,
        String place,
        List<ServingJson> servings,
        int thorough,
        List<SupplyJson> supplies,
        List<String> cautions) {

    /**
     * What is supplied for a number.
     *
     * @param build for boxes of this build; null for all boxes
     * @param end {@code supplied}, {@code withdrawn} or {@code depends-on-serial}
     * @param last the last number that can be told
     * @param with what must come along with it
     */
    public record SupplyJson(
            String asked, String build, String end, String last, List<String> with, List<String> says) {
        static SupplyJson of(Supplied supplied, Catalogue catalogue) {
            return new SupplyJson(
                    supplied.supply().asked(),
                    supplied.box().map(box -> box.build().id()).orElse(null),
                    Spelling.of(supplied.supply().end()),
                    supplied.supply().last(),
                    supplied.supply().with(),
                    SupplyWording.says(supplied.supply(), catalogue));
        }
    }

    public static FitJson of(FitAnswer answer, Catalogue catalogue) {
        return new FitJson(
                answer.set().map(SetJson::of).orElse(null),
                BuiltBoxJson.all(answer.boxes()),
                answer.serial().orElse(null),
                answer.place().orElse(null),
                Stream.concat(
                                answer.inFull().stream().map(serving -> ServingJson.of(serving, true)),
                                answer.inBrief().stream().map(serving -> ServingJson.of(serving, false)))
                        .toList(),
                answer.thorough(),
                answer.supplies().stream()
                        .map(supplied -> SupplyJson.of(supplied, catalogue))
                        .toList(),
                Cautions.ofParts());
    }
}
