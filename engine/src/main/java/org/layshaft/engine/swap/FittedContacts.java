package org.layshaft.engine.swap;

import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Meeting;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.engine.fit.Missing;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

/**
 * Transverse contact ratios as the check of them reckons them from the parts that stand in a box: the least that the
 * tolerance of the case allows.
 *
 * @param was the layout before, the one that is handed to {@link Comparison}
 * @param before what stood in the box
 * @param then what stands in it with the change
 */
public record FittedContacts(PartsCounter counter, Layout was, Fitted before, Fitted then) implements ContactRatios {
    private static final String CHECK = "transverse-contact";

    @Override
    public Telling<Double> of(Layout layout, Mesh mesh) {
        Meeting meeting = new Meeting(MeetingKind.TEETH, mesh.first(), mesh.second());
        Fitted fitted = layout.equals(was) ? before : then;
        return counter.judge(meeting, before, fitted)
                .filter(judgement -> judgement.check().id().equals(CHECK))
                .findFirst()
                .map(FittedContacts::told)
                .orElseGet(() -> ContactRatios.FROM_LAYOUT_ALONE.of(layout, mesh));
    }

    private static Telling<Double> told(Judgement judgement) {
        return judgement.isUntold()
                ? Telling.cannotBeTold(
                        judgement.missing().stream().map(Missing::words).toList())
                : Telling.told(judgement.figures().get(0).number());
    }
}
