package org.layshaft.web.page;

import java.util.List;

/**
 * The whole page.
 *
 * @param title of the document
 * @param announcement what a screen reader says once the page has changed
 * @param layouts to choose from, by name, with what each is
 * @param reading what was made of the question; null where none was asked
 * @param diagnosis to what may be wrong, going by what is noticed
 * @param sounds to what sounds at which frequency
 * @param says the answer in sentences
 * @param counter to what the parts counter says of it; null where no parts are asked about
 * @param faults what is supposed
 * @param part what is looked at; null for none
 * @param table everything that is noticed; null where nothing is supposed
 * @param meeting pairs of gears that can be engaged at once
 * @param kept pairs that are kept apart
 * @param faultCautions what to mind with what is supposed
 * @param usualCautions what to mind whatever is supposed; empty where nothing is
 */
record PageView(
        String title,
        String announcement,
        List<LayoutView> layouts,
        AskView ask,
        ReadingView reading,
        LinkView diagnosis,
        LinkView sounds,
        List<String> says,
        LinkView counter,
        List<SupposedView> faults,
        SheetView sheet,
        PartView part,
        List<VerdictView> gears,
        VerdictView neutral,
        FaultTableView table,
        List<PairView> meeting,
        List<PairView> kept,
        List<TurningView> turning,
        List<String> faultCautions,
        List<String> usualCautions,
        List<PartGroupView> parts,
        ElsewhereView elsewhere) {

    /** A layout to choose. */
    record LayoutView(String name, String summary, String href, boolean current) {}

    public boolean hasFaults() {
        return !faults.isEmpty();
    }

    public boolean hasCautions() {
        return !usualCautions.isEmpty();
    }

    public boolean hasFaultCautions() {
        return !faultCautions.isEmpty();
    }

    public boolean hasMeeting() {
        return !meeting.isEmpty();
    }

    public boolean hasKept() {
        return !kept.isEmpty();
    }

    public boolean hasPairs() {
        return hasMeeting() || hasKept();
    }

    public boolean hasTurning() {
        return !turning.isEmpty();
    }
}
