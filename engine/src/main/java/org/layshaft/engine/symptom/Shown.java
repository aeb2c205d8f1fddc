package org.layshaft.engine.symptom;

import org.layshaft.kb.failure.Heat;

/** What faults show with all cold, and with all hot; mostly the same. */
public record Shown(Signs cold, Signs hot) {

    public Signs at(Heat heat) {
        return heat == Heat.COLD ? cold : hot;
    }

    Shown and(Shown other) {
        Signs both = cold.and(other.cold);
        return new Shown(both, cold == hot && other.cold == other.hot ? both : hot.and(other.hot));
    }
}
