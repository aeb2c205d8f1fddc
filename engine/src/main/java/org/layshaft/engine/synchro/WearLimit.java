package org.layshaft.engine.synchro;

import java.util.OptionalDouble;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;
import org.layshaft.engine.stated.Telling;

/**
 * A size that wear changes: what it is when new, and how far it may go. A limit belongs to one place in one box and is
 * not carried over to another.
 *
 * @param what as it stands in a sentence: {@code the gap between ring and gear}
 * @param wear which way it goes
 * @param newLeastMm smallest when new, where it is stated
 * @param newMostMm largest when new, where it is stated
 * @param limitMm as far as it may go, where it is stated
 * @param source where that stands
 */
public record WearLimit(
        String what,
        Wear wear,
        OptionalDouble newLeastMm,
        OptionalDouble newMostMm,
        OptionalDouble limitMm,
        String source) {

    /** Which way wear changes the size. */
    public enum Wear {
        SHRINKS,
        GROWS
    }

    /** What a measured size comes to. */
    public enum State {
        /** On the unworn side of what is new: measured wrong, not pressed home, or another part. */
        BEYOND_NEW,
        /** As when new. */
        AS_NEW,
        /** Worn, and within the limit. */
        WITHIN_LIMIT,
        /** Past the limit. */
        WORN_OUT
    }

    public WearLimit {
        Objections objections = new Objections();
        if (newLeastMm.isPresent() && newMostMm.isPresent()) {
            objections.unless(
                    newLeastMm.getAsDouble() <= newMostMm.getAsDouble(),
                    "New, %s is stated as %s to %s mm. The first must not be more than the second: check it in %s.",
                    what,
                    Shown.decimal(newLeastMm.getAsDouble()),
                    Shown.decimal(newMostMm.getAsDouble()),
                    source);
        }
        OptionalDouble wornEnd = wear == Wear.SHRINKS ? newLeastMm : newMostMm;
        if (limitMm.isPresent() && wornEnd.isPresent()) {
            double limit = limitMm.getAsDouble();
            double end = wornEnd.getAsDouble();
            objections.unless(
                    wear == Wear.SHRINKS ? limit <= end : limit >= end,
                    "The limit of %s is stated as %s mm, new as %s mm. Wear makes it %s, so the limit must be %s: check it in %s.",
                    what,
                    Shown.decimal(limit),
                    Shown.decimal(end),
                    wear == Wear.SHRINKS ? "smaller" : "larger",
                    wear == Wear.SHRINKS ? "less" : "more",
                    source);
        }
        objections.refuse();
    }

    /**
     * The reserve between a blocking ring pressed home and its gear, by feeler gauge, as workshop manuals have it on the
     * whole: about 1 mm new, 0.5 mm worn out. For boxes of which nothing better is known, and no more than a hint.
     */
    public static WearLimit ringReserveByRuleOfThumb() {
        return new WearLimit(
                "the gap between ring and gear",
                Wear.SHRINKS,
                OptionalDouble.of(1),
                OptionalDouble.empty(),
                OptionalDouble.of(0.5),
                "common practice, several workshop manuals");
    }

    /** The clearance of one part in another, from the wear of both: what is outside grows, what is inside shrinks. */
    public static WearLimit clearance(String what, WearLimit outside, WearLimit inside) {
        return new WearLimit(
                what,
                Wear.GROWS,
                difference(outside.newLeastMm, inside.newMostMm),
                difference(outside.newMostMm, inside.newLeastMm),
                difference(outside.limitMm, inside.limitMm),
                outside.source.equals(inside.source) ? outside.source : outside.source + "; " + inside.source);
    }

    public Telling<State> judge(double measuredMm) {
        if (limitMm.isEmpty()) {
            return Telling.missing("the wear limit of " + what);
        }
        if (isMoreWorn(measuredMm, limitMm.getAsDouble())) {
            return Telling.told(State.WORN_OUT);
        }
        OptionalDouble wornEnd = wear == Wear.SHRINKS ? newLeastMm : newMostMm;
        OptionalDouble unwornEnd = wear == Wear.SHRINKS ? newMostMm : newLeastMm;
        if (wornEnd.isEmpty() || isMoreWorn(measuredMm, wornEnd.getAsDouble())) {
            return Telling.told(State.WITHIN_LIMIT);
        }
        boolean beyond = unwornEnd.isPresent()
                && measuredMm != unwornEnd.getAsDouble()
                && !isMoreWorn(measuredMm, unwornEnd.getAsDouble());
        return Telling.told(beyond ? State.BEYOND_NEW : State.AS_NEW);
    }

    private boolean isMoreWorn(double measuredMm, double sizeMm) {
        return wear == Wear.SHRINKS ? measuredMm < sizeMm : measuredMm > sizeMm;
    }

    private static OptionalDouble difference(OptionalDouble larger, OptionalDouble smaller) {
        return larger.isPresent() && smaller.isPresent()
                ? OptionalDouble.of(larger.getAsDouble() - smaller.getAsDouble())
                : OptionalDouble.empty();
    }
}
