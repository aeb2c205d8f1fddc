package org.layshaft.kb.parts;

import java.util.List;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Gate;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.ShiftMember;
import org.layshaft.kb.typed.TypedClutch;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedLayout;

/** Builds a layout with all its parts. It builds broken ones too, so that they can be checked whole. */
public final class LayoutBuilder {
    private LayoutBuilder() {}

    public static BuiltLayout build(TypedLayout typed) {
        PartLedger ledger = new PartLedger(typed.names());
        typed.shafts().forEach(shaft -> ShaftParts.add(shaft, ledger));
        List<ShiftMember> members = typed.members().stream()
                .map(member -> EngagementParts.add(member, typed, ledger))
                .toList();
        typed.differential().ifPresent(differential -> DifferentialParts.add(differential, ledger));
        SelectorParts.add(typed, ledger);
        typed.clutch()
                .ifPresent(clutch -> ledger.add(
                        new Clutch(
                                ledger.named(TypedClutch.ID, TypedClutch.ID, clutch.naming()),
                                clutch.drives().id()),
                        clutch.pointer()));
        return new BuiltLayout(layout(typed, members, ledger), ledger.parts());
    }

    private static Layout layout(TypedLayout typed, List<ShiftMember> members, PartLedger ledger) {
        return new Layout(
                typed.id().id(),
                typed.name(),
                typed.summary(),
                typed.input().id(),
                typed.differential()
                        .map(TypedDifferential::id)
                        .orElse(typed.output().id()),
                alwaysMade(typed),
                members,
                new Gate(typed.selector().gate().stream()
                        .map(rail -> rail.id() + "-rail")
                        .toList()),
                typed.printed(),
                ledger.byId());
    }

    private static List<Mesh> alwaysMade(TypedLayout typed) {
        return typed.gears()
                .flatMap(gear -> gear.meshes().stream().map(other -> new Mesh(gear.id(), other.id())))
                .toList();
    }
}
