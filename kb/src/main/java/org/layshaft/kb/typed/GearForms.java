package org.layshaft.kb.typed;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.MeshKind;

/** Where each gear of a layout has its teeth: what meshes with a bevel gear is one, what a chain joins is a sprocket. */
public final class GearForms {
    private final Map<String, Set<MeshKind>> kinds = new HashMap<>();

    private GearForms() {}

    public static GearForms of(TypedLayout layout) {
        GearForms forms = new GearForms();
        for (TypedMesh mesh : layout.meshes()) {
            forms.kinds(mesh.first()).add(mesh.kind());
            forms.kinds(mesh.second()).add(mesh.kind());
        }
        return forms;
    }

    public GearForm of(TypedGear gear) {
        if (gear.internal()) {
            return GearForm.INTERNAL;
        }
        Set<MeshKind> own = kinds(gear.id());
        if (gear.crown().isPresent() || own.stream().anyMatch(MeshKind::isBevel)) {
            return GearForm.BEVEL;
        }
        return own.contains(MeshKind.CHAIN) ? GearForm.SPROCKET : GearForm.EXTERNAL;
    }

    private Set<MeshKind> kinds(String gear) {
        return kinds.computeIfAbsent(gear, id -> EnumSet.noneOf(MeshKind.class));
    }
}
