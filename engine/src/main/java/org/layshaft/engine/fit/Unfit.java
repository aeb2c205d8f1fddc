package org.layshaft.engine.fit;

/** A check that fails at a meeting, in a box as it is at one step of a search. */
record Unfit(FitCheck check, Meeting meeting, Fitted before, Fitted now) {

    /** Whether it fails no longer. A part of which nothing is told leaves that open, and is no cure. */
    boolean isCuredBy(Fitted then) {
        Outcome outcome = FitChecks.outcome(check, meeting, before, then);
        return outcome == null || outcome == Outcome.HOLDS;
    }

    /** In full. */
    Judgement judgement() {
        return check.judge(new Judging(check, meeting, before, now, false)).orElseThrow();
    }
}
