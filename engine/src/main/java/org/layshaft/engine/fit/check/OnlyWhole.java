package org.layshaft.engine.fit.check;

import java.util.List;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/** A part of a set that is only to be had whole comes with the rest of it. */
public final class OnlyWhole extends BesideTheRest {
    public OnlyWhole() {
        super("only-whole", "Unit of exchange", "only whole", "of it is put in", "must come with the rest of the set");
    }

    @Override
    List<PartSet> sets(Fitted now, CataloguePart part) {
        return now.onlyIn(part);
    }

    @Override
    boolean isThere(Fitted now, String number) {
        return now.putIn().values().stream().anyMatch(put -> put.number().equals(number));
    }
}
