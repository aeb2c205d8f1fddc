package org.layshaft.engine.fit;

/** A check that fails at a meeting, in a box as it is at one step of a search. */
record Unfit(FitCheck check, Meeting meeting, Fitted before, Fitted now) {

    /** Whether it fails no longer. */
    boolean isCuredBy(Fitted then) {
        return FitChecks.outcome(check, meeting, before, then) != Outcome.FAILS;
    }

    /** In full. */
    Judgement judgement() {
        return check.judge(new Judging(check, meeting, before, now, false)).orElseThrow();
    }
}
