package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.layout.Gear;

/** A gear has its teeth where its place needs them: outside, inside a ring, or on a cone. */
public final class ToothForm extends Check {
    private static final Limit AS_ITS_PLACE = new Limit("must be as the layout has it at its place", "the layout");

    public ToothForm() {
        super("tooth-form", "Form of the teeth", MeetingKind.TEETH);
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held one = judging.one();
        Held other = judging.other();
        String formOfOne = one.word(FactName.FORM);
        String formOfOther = other.word(FactName.FORM);
        return judging.holds(
                formOfOne.equals(needed(judging, judging.meeting().one()))
                        && formOfOther.equals(needed(judging, judging.meeting().other())),
                List.of(Figure.of(one.name(), formOfOne), Figure.of(other.name(), formOfOther)),
                AS_ITS_PLACE);
    }

    private static String needed(Judging judging, String place) {
        return ((Gear) judging.now().layout().parts().get(place)).form().word();
    }
}
