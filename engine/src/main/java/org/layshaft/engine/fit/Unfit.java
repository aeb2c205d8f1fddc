package org.layshaft.engine.fit;

/** A check that fails at a meeting, in a box as it is at one step of a search. */
record Unfit(FitCheck check, Meeting meeting, Fitted before, Fitted now) {

    /** In full. */
    Judgement judgement() {
        return new Judging(meeting, before, now, false).by(check).orElseThrow();
    }
}
