package org.layshaft.web.page;

import java.util.List;
import org.layshaft.web.desk.FitSaid;

/**
 * The page of the parts counter.
 *
 * @param trouble what could not be used of what was asked
 * @param suggestions what could be meant instead
 * @param heading what was asked, in words; null where nothing is answered
 * @param lead the answer in a sentence; null where nothing is answered
 * @param servings in full, best first
 * @param rows in brief, best first
 * @param others in brief, where it does not fit
 * @param supplies what is supplied today
 * @param parts what is known of the parts of the set
 * @param sets to choose from; empty where something is answered
 * @param api where the same stands as JSON
 */
record FitView(
        FitFormView form,
        List<String> trouble,
        List<LinkView> suggestions,
        String heading,
        String lead,
        List<ServingView> servings,
        List<ServingView> rows,
        List<ServingView> others,
        List<SuppliedView> supplies,
        List<PartFactsView> parts,
        List<LinkView> sets,
        List<String> cautions,
        String api) {

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean hasSuggestions() {
        return !suggestions.isEmpty();
    }

    public boolean isInBrief() {
        return hasRows() || hasOthers();
    }

    /** What there is to know of what is told in brief. */
    public String ofBrief() {
        return FitSaid.OF_BRIEF;
    }

    public boolean hasRows() {
        return !rows.isEmpty();
    }

    public boolean hasOthers() {
        return !others.isEmpty();
    }

    public int othersCount() {
        return others.size();
    }

    public boolean hasSupplies() {
        return !supplies.isEmpty();
    }

    public boolean hasParts() {
        return !parts.isEmpty();
    }

    public boolean hasSets() {
        return !sets.isEmpty();
    }
}
