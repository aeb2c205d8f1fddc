package org.layshaft.engine.fit.check;

import java.util.Optional;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;
import org.layshaft.kb.layout.Mesh;

/** A bevel or hypoid ring gear stands on the side of the carrier break that its flange is made for. */
public final class CarrierRatio extends Check {
    private static final String BEVEL = "bevel";

    public CarrierRatio() {
        super("carrier-ratio", "Carrier break", MeetingKind.RING_GEAR);
    }

    @Override
    public boolean reckons() {
        return true;
    }

    @Override
    public Optional<Judgement> judge(Judging judging) {
        Held ringGear = judging.one();
        boolean concerned = ringGear.word(FactName.FORM).equals(BEVEL);
        if (judging.isUntold()) {
            return judging.untold();
        }
        return concerned ? ratio(judging, ringGear, judging.other()) : Optional.empty();
    }

    private static Optional<Judgement> ratio(Judging judging, Held ringGear, Held differential) {
        Figure ratio = ringGear.has(FactName.MADE_FOR_RATIO)
                ? Figure.of(
                        "the ratio that " + ringGear.name() + " is made thick for",
                        ringGear.number(FactName.MADE_FOR_RATIO),
                        Unit.RATIO)
                : Figure.of("the ratio", ringGear.number(FactName.TEETH) / pinionTeeth(judging), Unit.RATIO);
        double lowest = differential.number(FactName.LOWEST_RATIO);
        double highest = differential.number(FactName.HIGHEST_RATIO);
        return judging.between(ratio, lowest, highest, "the catalogue's facts of the differential");
    }

    private static double pinionTeeth(Judging judging) {
        String ringGear = judging.meeting().one();
        Mesh mesh = judging.now()
                .layout()
                .everyMesh()
                .filter(each -> each.joins(ringGear))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no mesh of '%s'".formatted(ringGear)));
        return judging.at(mesh.other(ringGear)).number(FactName.TEETH);
    }
}
