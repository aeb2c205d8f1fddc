package org.layshaft.kb.check;

import java.util.List;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;

/** Runs every check on a layout. Stateless and thread-safe, as each check is. */
public final class LayoutChecks {
    static final List<LayoutCheck> ALL = List.of(
            new CentreDistances(),
            new DanglingIds(),
            new EmptyShafts(),
            new FreeGearsNeverTied(),
            new GatePlanes(),
            new GearsWithoutMesh(),
            new IdleMembers(),
            new InputAndOutput(),
            new MembersOnRails(),
            new MeshesInLine(),
            new PilotBearings(),
            new RepeatedIds(),
            new RepeatedMeshes(),
            new SidesOutOfReach(),
            new SidesWithoutTeeth(),
            new UnlikeTeeth(),
            new Unreachable());

    private LayoutChecks() {}

    public static void run(TypedLayout layout, BuiltLayout built, Report report) {
        ALL.forEach(check -> check.run(layout, built, report));
    }
}
