package org.layshaft.engine.spline;

import java.util.Optional;

/** An involute spline, everything about it told but, perhaps, its tolerance. Dimensions are nominal. */
public sealed interface Spline permits Din5480, Iso4156, AnsiB92 {

    Member member();

    /** The standard's name: {@code DIN 5480}. */
    String standard();

    int teeth();

    double moduleMm();

    double pressureAngleDeg();

    /** Profile shift of the shaft's teeth in modules; of a hub, that of the shaft that suits it. */
    double shift();

    /** The outer diameter of the teeth: a shaft's tips, a hub's roots. */
    double majorMm();

    /** The inner diameter of the teeth: a shaft's roots, as high as the standard lets them be, a hub's tips. */
    double minorMm();

    /** At the pitch circle, along the arc: a shaft's tooth, a hub's space. */
    double toothOrSpaceMm();

    /** Empty where the standard knows one form only. */
    Optional<Root> root();

    Fit fit();

    /** In the standard's own way, and so that it is read back as the same spline. */
    String designation();

    /** How the tolerance lies about the nominal size, as {@link Tolerance#tightness}; empty where it is not told. */
    Optional<Integer> tightness();

    default double pitchMm() {
        return moduleMm() * teeth();
    }

    default double baseMm() {
        return pitchMm() * Math.cos(Math.toRadians(pressureAngleDeg()));
    }
}
