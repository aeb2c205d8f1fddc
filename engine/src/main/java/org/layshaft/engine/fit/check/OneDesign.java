package org.layshaft.engine.fit.check;

import java.util.List;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/** A part of a set that is of one design serves only beside the rest of it, which may stand there already. */
public final class OneDesign extends BesideTheRest {
    public OneDesign() {
        super(
                "one-design",
                "One design",
                "of one design",
                "of it stands there then",
                "must stand beside the rest of the set");
    }

    @Override
    List<PartSet> sets(Fitted now, CataloguePart part) {
        return now.designs(part);
    }

    @Override
    boolean isThere(Fitted now, String number) {
        return now.holds(number);
    }
}
