package org.layshaft.engine.teeth;

import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Side;

/**
 * The pitch surface of a gear. A cylinder is a cone whose point lies infinitely far off, toward the rear.
 *
 * @param angle of half the cone, in radians; 0 for a cylinder
 * @param apex the end of the shaft that its point lies toward
 * @param faceWidthMm along the teeth, for a cone only
 */
record Cone(double angle, Side apex, double faceWidthMm) {
    static final Cone CYLINDER = new Cone(0, Side.REAR, 0);

    /** Of a bevel gear that turns with another, its shaft at this angle in degrees to the other's. */
    static Telling<Cone> of(Toothing gear, Toothing mate, Telling<Double> shaftAngleDeg, Telling<Double> faceWidthMm) {
        Telling<Double> angle = shaftAngleDeg
                .map(Math::toRadians)
                .map(between ->
                        Math.atan2(Math.sin(between), (double) mate.teeth() / gear.teeth() + Math.cos(between)));
        Telling<Side> apex =
                Telling.of(gear.apex(), "the end of its shaft that the point of %s lies toward".formatted(gear.name()));
        return angle.with(apex, (half, end) -> new Cone(half, end, 0))
                .with(faceWidthMm, (cone, width) -> new Cone(cone.angle, cone.apex, width));
    }

    /** At the middle of the teeth, where the force is reckoned to act; from the module at the large end. */
    double meanRadiusMm(double largeRadiusMm) {
        return largeRadiusMm - faceWidthMm / 2 * Math.sin(angle);
    }

    /** 1 where what turns clockwise as seen from the front does so as seen from the large end, too. */
    int senseFromLargeEnd() {
        return apex == Side.REAR ? 1 : -1;
    }
}
