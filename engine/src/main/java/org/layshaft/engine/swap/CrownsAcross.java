package org.layshaft.engine.swap;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.layout.Side;

/** Puts crowns on the other side of their pinions, wherever a layout tells of their meshes. */
record CrownsAcross(Set<String> crowns) {

    List<Mesh> meshes(List<Mesh> meshes) {
        return meshes.stream().map(this::mesh).toList();
    }

    List<ShiftMember> members(List<ShiftMember> members) {
        return members.stream().map(this::member).toList();
    }

    private ShiftMember member(ShiftMember member) {
        Map<Side, Engagement> sides = new EnumMap<>(Side.class);
        member.sides().forEach((side, engagement) -> sides.put(side, engagement(engagement)));
        return new ShiftMember(member.part(), sides);
    }

    private Engagement engagement(Engagement engagement) {
        return engagement instanceof Engagement.Meshes slid ? new Engagement.Meshes(meshes(slid.meshes())) : engagement;
    }

    private Mesh mesh(Mesh mesh) {
        return crowns.contains(mesh.first()) || crowns.contains(mesh.second())
                ? new Mesh(mesh.first(), mesh.second(), across(mesh.kind()))
                : mesh;
    }

    private static MeshKind across(MeshKind kind) {
        return kind == MeshKind.BEVEL ? MeshKind.BEVEL_OPPOSITE : MeshKind.BEVEL;
    }
}
