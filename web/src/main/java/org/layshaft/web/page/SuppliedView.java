package org.layshaft.web.page;

import java.util.List;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.web.desk.FitAnswer.Supplied;
import org.layshaft.web.desk.FitWording;
import org.layshaft.web.desk.SupplyWording;

/**
 * What is supplied for a number.
 *
 * @param box for which boxes
 */
record SuppliedView(String number, String box, String brief, List<String> says) {
    static List<SuppliedView> all(List<Supplied> supplies, Catalogue catalogue) {
        return supplies.stream()
                .map(supplied -> new SuppliedView(
                        supplied.supply().asked(),
                        supplied.box().map(FitWording::of).orElse("all boxes"),
                        SupplyWording.brief(supplied.supply()),
                        SupplyWording.says(supplied.supply(), catalogue)))
                .toList();
    }
}
