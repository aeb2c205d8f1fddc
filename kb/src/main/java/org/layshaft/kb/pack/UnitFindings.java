package org.layshaft.kb.pack;

import java.util.List;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.typed.TypedUnit;

/**
 * Why a unit cannot be put in its place, in sentences.
 *
 * @param report of the file in which the unit is named
 */
record UnitFindings(TypedUnit unit, Report report) {

    void unknown(List<String> known) {
        tell(
                "There is no layout '%s' that could be the unit '%s'.".formatted(layout(), unit.name()),
                "It must stand in this pack or in one that is read before it. " + Nearest.advice(layout(), known));
    }

    void readLater(String place) {
        tell(
                "The layout '%s' is read after this one: %s.".formatted(layout(), place),
                "Move it to this pack, or have its pack read first.");
    }

    void ring(List<String> layouts) {
        tell(
                "Units hold one another in a ring: %s.".formatted(String.join(", ", layouts)),
                "Take out the unit that is to hold the whole.");
    }

    void tooDeep(List<String> layouts, int deepest) {
        tell(
                "Units lie more than %d deep in one another: %s.".formatted(deepest, String.join(", ", layouts)),
                "Join the innermost ones side by side.");
    }

    void broken(String file) {
        tell("The unit '%s' is broken itself: see %s.".formatted(unit.name(), file), "Put right what is found there.");
    }

    void brokenPack(String file) {
        tell(
                "The pack of the unit '%s' is broken: see %s and the files beside it.".formatted(unit.name(), file),
                "Put right what is found there.");
    }

    void notJoined() {
        tell(
                "Nothing joins the unit '%s' to the others.".formatted(unit.name()),
                "Add it to the 'joins': from '%1$s-output' or to '%1$s-input'.".formatted(unit.name()));
    }

    private String layout() {
        return unit.layout().id();
    }

    private void tell(String what, String advice) {
        report.broken(unit.layout().pointer(), what, layout(), advice);
    }
}
