package org.layshaft.web.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.fit.Companions;
import org.layshaft.engine.fit.Missing;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.engine.fit.Serving;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.web.desk.ExchangeWording;
import org.layshaft.web.desk.FitWording;

/**
 * Whether a set serves at one place of one box.
 *
 * @param set its number
 * @param build id of the build
 * @param places part numbers by the place where each goes
 * @param verdict {@code fits}, {@code fits-with}, {@code cannot-be-told} or {@code does-not-fit}
 * @param companions the smallest sets of further parts that help; any one of them will do
 * @param missing what is missing, in clauses
 * @param checks with the set alone put in; of what was not tried thoroughly, only those that do not hold
 * @param setAgain what must be measured and set again after the exchange
 */
public record ServingJson(
        String set,
        String build,
        String layout,
        Map<String, String> places,
        String verdict,
        String says,
        List<String> besides,
        List<CompanionsJson> companions,
        List<String> missing,
        List<FitCheckJson> checks,
        List<String> setAgain,
        List<String> notes) {

    /**
     * What must come along.
     *
     * @param parts part numbers by the place where each goes
     * @param cures what failed without them, unit by unit
     * @param told whether everything can be told with them
     */
    public record CompanionsJson(
            List<SetJson> units, Map<String, String> parts, List<FitCheckJson> cures, boolean told) {
        static CompanionsJson of(Companions companions) {
            return new CompanionsJson(
                    SetJson.all(companions.units()),
                    numbers(companions.parts()),
                    companions.cures().stream().map(FitCheckJson::of).toList(),
                    companions.told());
        }
    }

    /** @param whole with every check, also those that hold */
    static ServingJson of(Serving serving, boolean whole) {
        return new ServingJson(
                serving.placement().set().number(),
                serving.box().build().id(),
                serving.box().layout().id(),
                numbers(serving.placement().parts()),
                serving.verdict().word(),
                FitWording.verdict(serving),
                FitWording.besides(serving),
                serving.companions().stream().map(CompanionsJson::of).toList(),
                serving.missing().stream().map(Missing::words).toList(),
                serving.judgements().stream()
                        .filter(judgement -> whole || judgement.outcome() != Outcome.HOLDS)
                        .map(FitCheckJson::of)
                        .toList(),
                ExchangeWording.setAgain(serving),
                FitWording.notes(serving));
    }

    static Map<String, String> numbers(Map<String, CataloguePart> parts) {
        Map<String, String> numbers = new LinkedHashMap<>();
        parts.forEach((place, part) -> numbers.put(place, part.number()));
        return numbers;
    }
}
