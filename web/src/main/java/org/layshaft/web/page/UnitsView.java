package org.layshaft.web.page;

import org.layshaft.web.desk.Units;

/**
 * What the figures of a page are shown in.
 *
 * @param inch whether in inches
 * @param otherUnits what else there is, as the text of a link
 * @param otherUnitsHref to the same page in those
 */
record UnitsView(boolean inch, String otherUnits, String otherUnitsHref) {

    /** @param link to the page, without units */
    static UnitsView of(Units units, String link) {
        if (units == Units.INCH) {
            return new UnitsView(true, "The same in mm", link);
        }
        String inInches = link + (link.contains("?") ? "&" : "?") + "units=inch";
        return new UnitsView(false, "The same in inches", inInches);
    }
}
