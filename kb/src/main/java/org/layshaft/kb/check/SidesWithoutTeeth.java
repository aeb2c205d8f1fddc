package org.layshaft.kb.check;

import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMember;
import org.layshaft.kb.typed.TypedSide;

/** Sleeves without a rim that are said to come into mesh. */
final class SidesWithoutTeeth implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedMember member : layout.members()) {
            if (!member.hasTeethToMesh()) {
                member.sides().values().stream()
                        .filter(TypedSide.Meshes.class::isInstance)
                        .forEach(side -> report.broken(
                                side.pointer(),
                                "The sleeve '%s' has no teeth on its outside that could mesh.".formatted(member.base()),
                                member.base(),
                                "Give it a 'rim', or name a gear that it couples."));
            }
        }
    }
}
