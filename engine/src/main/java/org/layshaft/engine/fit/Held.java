package org.layshaft.engine.fit;

import java.util.function.Supplier;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.Facts;

/** One side of a meeting: the facts there, and a name for them. What is asked for and not there is noted as missing. */
public final class Held {
    private final Judging judging;
    private final CataloguePart part;
    private final Facts facts;
    private final Supplier<String> name;

    Held(Judging judging, CataloguePart part, Facts facts, Supplier<String> name) {
        this.judging = judging;
        this.part = part;
        this.facts = facts;
        this.name = name;
    }

    /** In words: {@code the third gear SM-1203}. */
    public String name() {
        return name.get();
    }

    /** The part; null where nobody has told. */
    public CataloguePart part() {
        return part;
    }

    public boolean has(FactName fact) {
        return facts.has(fact);
    }

    /** The number, or NaN and noted as missing. */
    public double number(FactName fact) {
        Fact told = fact(fact);
        return told == null ? Double.NaN : told.number();
    }

    /** The word, or an empty one and noted as missing. */
    public String word(FactName fact) {
        Fact told = fact(fact);
        return told == null ? "" : told.text();
    }

    /** The fact, or null and noted as missing. */
    public Fact fact(FactName fact) {
        Fact told = facts.get(fact);
        if (told == null) {
            judging.missing(this, fact);
        }
        return told;
    }

    /** Notes a fact as missing, since what is told of it cannot be read. */
    public void unread(FactName fact) {
        judging.missing(this, fact);
    }

    /** The number where it is told; otherwise this one. Nothing is noted. */
    public double numberOr(FactName fact, double otherwise) {
        Fact told = facts.get(fact);
        return told == null ? otherwise : told.number();
    }
}
