package org.layshaft.web.page;

import java.util.List;
import org.layshaft.web.desk.WishLine;
import org.layshaft.web.page.FitFormView.ChoiceView;

/**
 * The page of wishes.
 *
 * @param boxes every layout, and every build whose parts are known
 * @param kinds of wishes of a gear
 * @param form of a wish of a gear; the others of an axle, and of the speed reading
 * @param heading what is wished, in words; null where nothing is answered
 * @param says in sentences
 * @param lines now, wished and offered
 * @param more how many more are offered; 0 where all are shown
 * @param rules what teeth may be cut; null where none are offered
 * @param sets that meet the wish and fit
 * @param others the nearest of those that do not fit
 * @param axles that there are
 * @param driven speed gears that there are
 * @param api where the same stands as JSON
 */
record WishView(
        List<ChoiceView> boxes,
        List<ChoiceView> kinds,
        WishFormView form,
        WishFormView axleForm,
        WishFormView readingForm,
        List<String> trouble,
        String heading,
        List<String> says,
        List<WishLine> lines,
        int more,
        String rules,
        List<WishedSetView> sets,
        List<WishedSetView> others,
        List<WishedAxleView> axles,
        List<DrivenView> driven,
        List<String> cautions,
        String api) {

    /**
     * What was typed; empty for nothing.
     *
     * @param told whether this is the form that was sent
     */
    record WishFormView(
            String serial,
            String gear,
            String value,
            String other,
            String at,
            String within,
            String centre,
            String axle,
            String tyre,
            String wasTyre,
            boolean told) {}

    /** @param swapHref to what it changes */
    record WishedSetView(ServingView serving, String ratio, String exact, String misses, String swapHref) {}

    /** @param swapHref to what the axle changes */
    record WishedAxleView(String ratio, String exact, String does, List<LinkView> sets, String swapHref) {}

    /** A driven speed gear. */
    record DrivenView(int teeth, String reads, ServingView serving) {}

    /** Whether an axle is wished, so that its form stands open. */
    public boolean isOfAxle() {
        return axleForm.told();
    }

    /** Whether the reading is, in the same way. */
    public boolean isOfReading() {
        return readingForm.told();
    }

    public boolean hasTrouble() {
        return !trouble.isEmpty();
    }

    public boolean hasLines() {
        return !lines.isEmpty();
    }

    public boolean hasSets() {
        return !sets.isEmpty();
    }

    public boolean hasOthers() {
        return !others.isEmpty();
    }

    public boolean hasAxles() {
        return !axles.isEmpty();
    }

    public boolean hasDriven() {
        return !driven.isEmpty();
    }

    /** Null where everything is shown, so that nothing is said of it. */
    public String andMore() {
        return more > 0 ? "%d more are in the JSON.".formatted(more) : null;
    }
}
