package org.layshaft.engine.teeth;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.teeth.ToothForce.Tangential;
import org.layshaft.kb.layout.Hand;

/**
 * All that the forces at a mesh depend on. Straight or helical, on cylinders or cones, one pair of formulas serves:
 * with tangential force Ft, pressure angle a, helix b and cone d, toward the centre Ft/cos b · (tan a cos d ± sin b sin
 * d), toward the point of the cone Ft/cos b · (± sin b cos d − tan a sin d). The upper sign is for a driver of right
 * hand that turns clockwise as seen from its large end; each change of hand, sense or drive changes it.
 *
 * @param flank angles of the teeth
 */
record MeshGeometry(double moduleMm, Flank flank, Cone driverCone, Cone drivenCone) {

    /**
     * @param helix in radians
     * @param driverHand 1 for right, -1 for left, 0 for straight-cut teeth
     * @param pressureAngle normal, in radians
     */
    record Flank(double helix, int driverHand, double pressureAngle) {}

    static Telling<MeshGeometry> of(LoadedPair pair) {
        Mates mates = new Mates(pair.driver(), pair.driven());
        mates.check();
        if (mates.isChain()) {
            return Telling.cannotBeTold(
                    List.of(mates.names() + " share a chain, whose pull is no force between teeth"));
        }
        if (mates.isHypoid()) {
            return Telling.cannotBeTold(List.of(
                    "the spiral angles of %s differ, as those of a hypoid pair do, whose forces are not reckoned here"
                            .formatted(mates.names())));
        }
        return mates.shared(Toothing::moduleMm, "the module")
                .with(flank(mates), (module, flank) -> new MeshGeometry(module, flank, Cone.CYLINDER, Cone.CYLINDER))
                .with(
                        cones(pair, mates),
                        (mesh, cones) -> new MeshGeometry(mesh.moduleMm, mesh.flank, cones.get(0), cones.get(1)));
    }

    PairForces forces(LoadedPair pair) {
        double driverRadius = radiusMm(pair.driver(), driverCone);
        double tangential = 1000 * pair.torqueNm() / driverRadius;
        int sense = flank.driverHand * pair.driverTurns().sign() * driverCone.senseFromLargeEnd();
        return new PairForces(
                force(pair.driver(), pair.driverTurns(), driverCone, driverRadius, tangential, sense, true),
                force(
                        pair.driven(),
                        drivenTurns(pair),
                        drivenCone,
                        radiusMm(pair.driven(), drivenCone),
                        tangential,
                        -sense,
                        false));
    }

    private ToothForce force(
            Toothing gear, Turn turns, Cone cone, double radiusMm, double tangential, int sense, boolean drives) {
        double along = tangential / Math.cos(flank.helix);
        double slope = Math.tan(flank.pressureAngle);
        double wind = sense * Math.sin(flank.helix);
        double inward = along * (slope * Math.cos(cone.angle()) + wind * Math.sin(cone.angle()));
        double towardApex = along * (wind * Math.cos(cone.angle()) - slope * Math.sin(cone.angle()));
        return ToothForce.of(
                gear.name(),
                turns,
                tangential,
                drives ? Tangential.AGAINST_ROTATION : Tangential.WITH_ROTATION,
                gear.isInternal() ? -inward : inward,
                towardApex * cone.senseFromLargeEnd(),
                radiusMm);
    }

    /** External gears turn opposite ways; so do bevels, each seen from its large end. */
    private Turn drivenTurns(LoadedPair pair) {
        boolean internal = pair.driver().isInternal() || pair.driven().isInternal();
        boolean alike = internal || driverCone.senseFromLargeEnd() != drivenCone.senseFromLargeEnd();
        return alike ? pair.driverTurns() : pair.driverTurns().opposite();
    }

    private double radiusMm(Toothing gear, Cone cone) {
        // the module of helical teeth is normal to them, that of bevel gears lies across
        double transverse = gear.isBevel() ? moduleMm : moduleMm / Math.cos(flank.helix);
        return cone.meanRadiusMm(transverse * gear.teeth() / 2);
    }

    private static Telling<Flank> flank(Mates mates) {
        Telling<Double> helix =
                mates.shared(Toothing::helixDeg, "the helix angle").map(Math::toRadians);
        boolean straight = helix.value().filter(angle -> angle == 0).isPresent();
        Telling<Integer> hand = straight
                ? Telling.told(0)
                : Telling.of(mates.driverHand(), "the hand of " + mates.names()).map(MeshGeometry::sign);
        return helix.with(hand, (angle, sign) -> new Flank(angle, sign, 0))
                .with(
                        mates.shared(Toothing::pressureAngleDeg, "the pressure angle"),
                        (flank, angle) -> new Flank(flank.helix, flank.driverHand, Math.toRadians(angle)));
    }

    private static Telling<List<Cone>> cones(LoadedPair pair, Mates mates) {
        if (!mates.isBevel()) {
            return Telling.told(List.of(Cone.CYLINDER, Cone.CYLINDER));
        }
        OptionalDouble stated = pair.shaftAngleDeg();
        Telling<Double> shaftAngle = Telling.of(
                stated.isPresent() ? Optional.of(stated.getAsDouble()) : Optional.empty(),
                "the angle between the shafts of " + mates.names());
        Telling<Double> width = mates.shared(Toothing::faceWidthMm, "the face width");
        return Telling.all(List.of(
                Cone.of(pair.driver(), pair.driven(), shaftAngle, width),
                Cone.of(pair.driven(), pair.driver(), shaftAngle, width)));
    }

    private static int sign(Hand hand) {
        return hand == Hand.RIGHT ? 1 : -1;
    }
}
