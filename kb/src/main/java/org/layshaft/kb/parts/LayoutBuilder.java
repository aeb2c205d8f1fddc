package org.layshaft.kb.parts;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Gate;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.typed.GearForms;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedClutch;
import org.layshaft.kb.typed.TypedJoin;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedRoad;

/** Builds a layout with all its parts. It builds broken ones too, so that they can be checked whole. */
public final class LayoutBuilder {
    private LayoutBuilder() {}

    public static BuiltLayout build(TypedLayout typed) {
        PartLedger ledger = new PartLedger(typed.names());
        GearForms forms = GearForms.of(typed);
        typed.shafts().forEach(shaft -> ShaftParts.add(shaft, forms, ledger));
        List<ShiftMember> members = typed.members().stream()
                .map(member -> EngagementParts.add(member, typed, ledger))
                .toList();
        typed.differentials().forEach(differential -> DifferentialParts.add(differential, forms, ledger));
        SelectorParts.add(typed, ledger);
        typed.clutch()
                .ifPresent(clutch -> ledger.add(
                        new Clutch(
                                ledger.named(TypedClutch.ID, TypedClutch.ID, clutch.naming()),
                                Optional.empty(),
                                clutch.drives().id()),
                        clutch.pointer()));
        for (TypedJoin join : typed.joins()) {
            ledger.add(
                    new Joint(
                            ledger.named(join.id(), DefaultNames.words(join.id()), join.naming()),
                            join.from().id(),
                            join.to().id()),
                    join.pointer());
        }
        FittingParts.add(typed, ledger);
        return new BuiltLayout(layout(typed, members, ledger), ledger.parts());
    }

    private static Layout layout(TypedLayout typed, List<ShiftMember> members, PartLedger ledger) {
        return new Layout(
                typed.id().id(),
                typed.name(),
                typed.summary(),
                typed.input().id(),
                typed.effectiveOutputs().stream().map(Reference::id).toList(),
                typed.takeOffs().stream().map(Reference::id).toList(),
                typed.meshesAlwaysMade().stream().map(TypedMesh::mesh).toList(),
                members,
                new Gate(typed.selector().gate().stream()
                        .map(rail -> TypedRail.idOf(rail.id()))
                        .toList()),
                Levers.of(typed),
                typed.printed(),
                typed.road().map(TypedRoad::facts),
                ledger.byId());
    }
}
