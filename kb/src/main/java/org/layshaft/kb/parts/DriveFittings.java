package org.layshaft.kb.parts;

import java.util.Optional;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/** What belongs to chains, differentials, half-shafts and wheels, and what lies behind the output. */
final class DriveFittings {
    private final TypedLayout layout;
    private final PartLedger ledger;

    private DriveFittings(TypedLayout layout, PartLedger ledger) {
        this.layout = layout;
        this.ledger = ledger;
    }

    static void add(TypedLayout layout, PartLedger ledger) {
        DriveFittings fittings = new DriveFittings(layout, ledger);
        layout.meshesAlwaysMade().stream()
                .filter(mesh -> mesh.mesh().kind() == MeshKind.CHAIN)
                .forEach(fittings::chain);
        ledger.all(Differential.class).forEach(each -> fittings.differential(each.part(), each.pointer()));
        ledger.all(HalfShaft.class).forEach(each -> fittings.halfShaft(each.part(), each.pointer()));
        layout.effectiveOutputs().forEach(fittings::propellerShaft);
        ledger.all(HalfShaft.class)
                .findFirst()
                .ifPresent(any -> ledger.add(
                        new Fitting(ledger.named("tyres", "tyres"), PartKind.TYRES, Optional.empty(), Optional.empty()),
                        any.pointer()));
    }

    private void chain(TypedMesh mesh) {
        String id = mesh.mesh().first() + "-chain";
        add(PartKind.CHAIN, id, DefaultNames.words(id), mesh.mesh().first(), mesh.pointer());
    }

    private void differential(Differential differential, String pointer) {
        String id = differential.id();
        String words = DefaultNames.words(id);
        add(PartKind.SIDE_GEARS, id + "-side-gears", words + " side gears", id, pointer);
        add(PartKind.DIFFERENTIAL_PINIONS, id + "-pinions", words + " pinions", id, pointer);
        add(PartKind.CROSS_SHAFT, id + "-cross-shaft", words + " cross-shaft", id, pointer);
        add(PartKind.CARRIER_BEARINGS, id + "-carrier-bearings", words + " carrier bearings", id, pointer);
        differential
                .limitedSlip()
                .ifPresent(slip ->
                        add(PartKind.LIMITED_SLIP, id + "-limited-slip", words + " limited-slip clutch", id, pointer));
        differential.ringGear().filter(this::isSetByHand).ifPresent(ring -> {
            String before =
                    id.endsWith("differential") ? id.substring(0, id.length() - "differential".length()) : id + "-";
            add(
                    PartKind.FINAL_DRIVE,
                    before + "final-drive",
                    DefaultNames.words(before + "final-drive"),
                    ring,
                    pointer);
        });
    }

    /** Depth and backlash are set where ring gear and pinion are bevels; parallel shafts stand as the case has them. */
    private boolean isSetByHand(String ringGear) {
        return ledger.all(Gear.class)
                .map(PartLedger.Placed::part)
                .anyMatch(gear -> gear.id().equals(ringGear) && gear.form() == GearForm.BEVEL);
    }

    private void halfShaft(HalfShaft halfShaft, String pointer) {
        String place = halfShaft
                .id()
                .substring(
                        0,
                        halfShaft.id().length()
                                - TypedDifferential.halfShaft("").length());
        String words = DefaultNames.words(place);
        boolean rigid = layout.differentials().stream()
                .anyMatch(each -> each.id().equals(halfShaft.differential()) && each.rigid());
        if (!rigid) {
            add(PartKind.INNER_JOINT, place + "-inner-joint", words + " inner joint", halfShaft.id(), pointer);
            add(PartKind.OUTER_JOINT, place + "-outer-joint", words + " outer joint", halfShaft.id(), pointer);
        }
        add(PartKind.WHEEL_BEARING, place + "-wheel-bearing", words + " wheel bearing", halfShaft.id(), pointer);
    }

    /** Something lies behind an output shaft; behind one that a chain turns, that is the wheel. */
    private void propellerShaft(Reference output) {
        boolean isShaft =
                ledger.all(Shaft.class).anyMatch(shaft -> shaft.part().id().equals(output.id()));
        boolean joined = ledger.all(Joint.class).findAny().isPresent();
        boolean chained = layout.meshesAlwaysMade().stream()
                .filter(mesh -> mesh.mesh().kind() == MeshKind.CHAIN)
                .anyMatch(mesh -> isOn(output.id(), mesh.mesh().first())
                        || isOn(output.id(), mesh.mesh().second()));
        if (isShaft && !joined && !(chained && layout.effectiveOutputs().size() == 1)) {
            String before = layout.effectiveOutputs().size() == 1 ? "" : output.id() + "-";
            add(
                    PartKind.JOINT,
                    before + "propeller-shaft",
                    DefaultNames.words(before + "propeller-shaft"),
                    output.id(),
                    output.pointer());
        }
    }

    private boolean isOn(String shaft, String gear) {
        return layout.shaftOf(gear).filter(on -> on.id().equals(shaft)).isPresent();
    }

    private void add(PartKind kind, String id, String name, String of, String pointer) {
        ledger.add(new Fitting(ledger.named(id, name), kind, Optional.of(of), Optional.empty()), pointer);
    }
}
