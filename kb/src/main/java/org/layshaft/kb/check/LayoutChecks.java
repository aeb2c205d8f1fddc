package org.layshaft.kb.check;

import java.util.List;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;

/** Runs every check on a layout. Stateless and thread-safe, as each check is. */
public final class LayoutChecks {
    static final List<LayoutCheck> ALL = List.of(
            new Carriers(),
            new CentreDistances(),
            new ClutchesOnLevers(),
            new Crowns(),
            new DanglingIds(),
            new DifferentialLocks(),
            new DifferentialShafts(),
            new DrumPlaces(),
            new EmptyShafts(),
            new FreeGearsNeverTied(),
            new GatePlanes(),
            new GearsWithoutMesh(),
            new HandsWithoutHelix(),
            new IdleMembers(),
            new InputAndOutput(),
            new InternalGears(),
            new Joins(),
            new LeverPlaces(),
            new LimitedSlips(),
            new MembersOnRails(),
            new MeshesInLine(),
            new MixedTeeth(),
            new PilotBearings(),
            new PlanetSpacing(),
            new RepeatedIds(),
            new RepeatedMeshes(),
            new RoadFacts(),
            new RollingElements(),
            new SidesOutOfReach(),
            new SidesWithoutTeeth(),
            new TiedAtTwoRatios(),
            new UnlikeTeeth(),
            new Unreachable());

    private LayoutChecks() {}

    public static void run(TypedLayout layout, BuiltLayout built, Report report) {
        ALL.forEach(check -> check.run(layout, built, report));
    }
}
