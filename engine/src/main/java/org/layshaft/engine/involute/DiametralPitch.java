package org.layshaft.engine.involute;

import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/** How fine teeth are by the inch: {@code perInch} teeth for each inch of reference diameter. */
public record DiametralPitch(double perInch) {
    public static final double MM_PER_INCH = 25.4;

    public DiametralPitch {
        new Objections()
                .unless(perInch > 0, "The diametral pitch is %s. It must be more than 0.", Shown.decimal(perInch))
                .refuse();
    }

    public static DiametralPitch ofModuleMm(double moduleMm) {
        return new DiametralPitch(MM_PER_INCH / moduleMm);
    }

    public double moduleMm() {
        return MM_PER_INCH / perInch;
    }
}
