package org.layshaft.kb.parts;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;
import org.layshaft.kb.typed.GearForms;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedBearing;
import org.layshaft.kb.typed.TypedDogs;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedInnerClutch;
import org.layshaft.kb.typed.TypedItem;
import org.layshaft.kb.typed.TypedShaft;
import org.layshaft.kb.typed.TypedSleeve;

/** A shaft, what sits along it, the needles under its free gears and the hubs under its sleeves. */
final class ShaftParts {
    private ShaftParts() {}

    static void add(TypedShaft shaft, GearForms forms, PartLedger ledger) {
        List<String> along = shaft.along().stream().map(TypedItem::id).toList();
        ledger.add(
                new Shaft(
                        ledger.named(shaft.id(), DefaultNames.shaft(shaft.id()), shaft.naming()),
                        shaft.held(),
                        shaft.carriedBy().map(Reference::id),
                        shaft.count(),
                        along),
                shaft.pointer());
        shaft.along().forEach(item -> addItem(item, shaft.id(), forms, ledger));
    }

    private static void addItem(TypedItem item, String shaft, GearForms forms, PartLedger ledger) {
        if (item instanceof TypedGear gear) {
            addGear(gear, shaft, forms, ledger);
        } else if (item instanceof TypedSleeve sleeve) {
            addSleeve(sleeve, shaft, forms, ledger);
        } else if (item instanceof TypedBearing bearing) {
            ledger.add(
                    new Bearing(
                            ledger.named(bearing.id(), DefaultNames.bearing(bearing.id()), bearing.naming()),
                            shaft,
                            bearing.in().map(Reference::id).orElse(Bearing.CASE),
                            bearing.thrust(),
                            bearing.rolling()),
                    bearing.pointer());
        } else if (item instanceof TypedDogs dogs) {
            ledger.add(
                    new DogRing(ledger.named(dogs.id(), DefaultNames.words(dogs.id()), dogs.naming()), shaft),
                    dogs.pointer());
        } else if (item instanceof TypedInnerClutch clutch) {
            String name = DefaultNames.words(clutch.base()) + " clutch";
            ledger.add(
                    new Clutch(
                            ledger.named(clutch.id(), name, clutch.naming()),
                            Optional.of(shaft),
                            clutch.drives().id()),
                    clutch.pointer());
        }
    }

    static void addGear(TypedGear gear, String carrier, GearForms forms, PartLedger ledger) {
        ledger.add(
                new Gear(
                        ledger.named(gear.id(), DefaultNames.gear(gear.id()), gear.naming()),
                        carrier,
                        gear.seat(),
                        forms.of(gear),
                        gear.teeth().orElse(0),
                        gear.moduleMm(),
                        gear.helixDeg(),
                        gear.hand(),
                        gear.pressureAngleDeg()),
                gear.pointer());
        if (gear.seat() == Seat.FREE) {
            String name = DefaultNames.words(gear.id()) + " needle bearing";
            ledger.add(new Bearing(ledger.named(gear.id() + "-needles", name), carrier, gear.id()), gear.pointer());
        }
    }

    private static void addSleeve(TypedSleeve sleeve, String shaft, GearForms forms, PartLedger ledger) {
        String words = DefaultNames.words(sleeve.base());
        ledger.add(
                new Sleeve(
                        ledger.named(sleeve.id(), words + " sleeve", sleeve.naming()),
                        shaft,
                        sleeve.hub(),
                        sleeve.rim().map(TypedGear::id)),
                sleeve.pointer());
        ledger.add(new Hub(ledger.named(sleeve.hub(), words + " hub"), sleeve.id(), shaft), sleeve.pointer());
        sleeve.rim().ifPresent(rim -> addGear(rim, sleeve.id(), forms, ledger));
    }
}
