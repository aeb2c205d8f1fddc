package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Meeting;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** No less of the faces of both gears lies on each other than in the pair that was there. */
public final class FaceInContact extends ParallelCheck {
    public FaceInContact() {
        super("face-in-contact", "Face in contact");
    }

    @Override
    Optional<Judgement> judge(Judging judging, Held one, Held other) {
        Meeting mesh = judging.meeting();
        double faceOfOne = one.number(FactName.FACE_MM);
        double faceOfOther = other.number(FactName.FACE_MM);
        double was = Math.min(
                judging.was(mesh.one()).number(FactName.FACE_MM),
                judging.was(mesh.other()).number(FactName.FACE_MM));
        Figure common = Figure.of("the face that both have in common", Math.min(faceOfOne, faceOfOther), Unit.MM);
        return judging.between(
                List.of(
                        Figure.of(one.name(), faceOfOne, Unit.MM),
                        Figure.of(other.name(), faceOfOther, Unit.MM),
                        common),
                common,
                was,
                Double.POSITIVE_INFINITY,
                "the pair that the box was built with");
    }
}
