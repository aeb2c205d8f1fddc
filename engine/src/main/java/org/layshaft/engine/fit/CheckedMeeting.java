package org.layshaft.engine.fit;

/** What the checks say of a meeting with certain parts there, without words; each is asked once, when it is wanted. */
final class CheckedMeeting {
    private final FitCheck[] checks;
    private final Judging judging;
    private final Outcome[] outcomes;
    private final boolean[] asked;

    /** @param checks those for meetings of this kind, in the order in which they are asked */
    CheckedMeeting(FitCheck[] checks, Meeting meeting, Fitted before, Fitted now) {
        this.checks = checks;
        this.judging = new Judging(meeting, before, now, true);
        this.outcomes = new Outcome[checks.length];
        this.asked = new boolean[checks.length];
    }

    /** The first check that fails; null where none does. */
    FitCheck firstFailing() {
        for (int check = 0; check < checks.length; check++) {
            if (outcome(check) == Outcome.FAILS) {
                return checks[check];
            }
        }
        return null;
    }

    /** The worst that any check says; it looks no further once one fails. Null where none says anything. */
    Outcome worst() {
        Outcome worst = null;
        for (int check = 0; check < checks.length; check++) {
            Outcome outcome = outcome(check);
            if (outcome == Outcome.FAILS) {
                return outcome;
            }
            if (outcome != null && worst != Outcome.UNTOLD) {
                worst = outcome;
            }
        }
        return worst;
    }

    /** What one check says; null where it has nothing to say. */
    Outcome of(FitCheck wanted) {
        int check = 0;
        while (checks[check] != wanted) {
            check++;
        }
        return outcome(check);
    }

    private Outcome outcome(int check) {
        if (!asked[check]) {
            asked[check] = true;
            outcomes[check] = judging.by(checks[check]).map(Judgement::outcome).orElse(null);
        }
        return outcomes[check];
    }
}
