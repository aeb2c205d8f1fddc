package org.layshaft.engine.involute;

import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Shown;

/**
 * The rack that a gear's teeth are made to match, all in modules. The pressure angle is told by the gear.
 *
 * @param addendum height of the tooth above the datum line
 * @param dedendum depth of the tooth below the datum line
 * @param filletRadius of the rounding at the root
 */
public record BasicRack(double addendum, double dedendum, double filletRadius) {
    /** ISO 53, profile A: the usual one. */
    public static final BasicRack A = new BasicRack(1, 1.25, 0.38);

    /** ISO 53, profile B. */
    public static final BasicRack B = new BasicRack(1, 1.25, 0.30);

    /** ISO 53, profile C. */
    public static final BasicRack C = new BasicRack(1, 1.25, 0.25);

    /** ISO 53, profile D: deep roots, full fillets. */
    public static final BasicRack D = new BasicRack(1, 1.40, 0.39);

    public BasicRack {
        new Objections()
                .unless(addendum > 0, "The addendum is %s modules. It must be more than 0.", Shown.decimal(addendum))
                .unless(dedendum > 0, "The dedendum is %s modules. It must be more than 0.", Shown.decimal(dedendum))
                .unless(
                        filletRadius >= 0,
                        "The fillet radius is %s modules. It must not be below 0.",
                        Shown.decimal(filletRadius))
                .refuse();
    }

    /** How far below the datum line the flank is straight, in modules. */
    double straightDedendum(double pressureAngle) {
        return dedendum - filletRadius * (1 - Math.sin(pressureAngle));
    }
}
