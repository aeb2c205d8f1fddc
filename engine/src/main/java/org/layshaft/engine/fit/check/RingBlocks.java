package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.engine.synchro.Blocking;
import org.layshaft.engine.synchro.Chamfer;
import org.layshaft.engine.synchro.Cone;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** While the speeds differ the cone holds the ring harder than the points of the sleeve turn it aside. */
public final class RingBlocks extends Check {
    public RingBlocks() {
        super("ring-blocks", "Blocking of the ring", MeetingKind.CONE);
    }

    @Override
    public boolean reckons() {
        return true;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held ring = judging.other();
        double coneDeg = ring.number(FactName.CONE_DEG);
        double coneMm = ring.number(FactName.CONE_MM);
        double friction = ring.number(FactName.FRICTION);
        int surfaces = surfaces(ring.word(FactName.CONE_TYPE));
        double chamferDeg = ring.number(FactName.CHAMFER_DEG);
        double pointsMm = ring.number(FactName.CLUTCHING_MM);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return Impossible.fails(judging, () -> {
            Cone cone = new Cone(coneDeg, coneMm, friction, surfaces);
            double margin = new Blocking(cone, new Chamfer(chamferDeg, pointsMm, friction)).marginRatio();
            return judging.atLeast(
                    Figure.of("the torque of the cone over that at the points", margin, Unit.RATIO),
                    1,
                    "Socin and Walters, SAE 680008 (1968)");
        });
    }

    /** The same force presses all of them, one within the other. */
    private static int surfaces(String type) {
        return switch (type) {
            case "double" -> 2;
            case "triple" -> 3;
            default -> 1;
        };
    }
}
