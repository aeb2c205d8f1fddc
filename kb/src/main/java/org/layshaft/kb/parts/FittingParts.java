package org.layshaft.kb.parts;

import java.util.Optional;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.Fitting;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;
import org.layshaft.kb.typed.TypedClutch;
import org.layshaft.kb.typed.TypedLayout;

/** What every box has about it without its being typed: in the synchronisers, on the clutch side, around the case. */
final class FittingParts {
    private final TypedLayout layout;
    private final PartLedger ledger;

    private FittingParts(TypedLayout layout, PartLedger ledger) {
        this.layout = layout;
        this.ledger = ledger;
    }

    /** Goes after all other parts: it looks at them. */
    static void add(TypedLayout layout, PartLedger ledger) {
        FittingParts fittings = new FittingParts(layout, ledger);
        fittings.insideTheBox();
        LeverFittings.add(layout, ledger);
        DriveFittings.add(layout, ledger);
        fittings.clutchSide();
        fittings.aroundTheCase();
    }

    private void insideTheBox() {
        ledger.all(Sleeve.class).filter(sleeve -> hasRing(sleeve.part())).forEach(sleeve -> {
            String base = sleeve.part().id().replaceFirst("-sleeve$", "");
            ledger.add(
                    fitting(
                            PartKind.KEYS,
                            base + "-keys",
                            DefaultNames.words(base) + " keys and springs",
                            sleeve.part().id()),
                    sleeve.pointer());
        });
        ledger.all(Gear.class)
                .filter(gear -> gear.part().seat() == Seat.FREE)
                .forEach(gear -> ledger.add(
                        fitting(
                                PartKind.THRUST_WASHER,
                                gear.part().id() + "-thrust-washer",
                                DefaultNames.words(gear.part().id()) + " thrust washer",
                                gear.part().id()),
                        gear.pointer()));
        SharedDrive.found(layout, ledger)
                .ifPresent(
                        pointer -> add(PartKind.TIMING, "countershaft-timing", "timing of the countershafts", pointer));
    }

    private boolean hasRing(Sleeve sleeve) {
        return ledger.all(BlockingRing.class)
                .anyMatch(ring -> ring.part().sleeve().equals(sleeve.id()));
    }

    private void clutchSide() {
        layout.clutch().ifPresent(clutch -> {
            add(PartKind.ENGINE, "engine", "engine", clutch.pointer());
            ledger.add(
                    fitting(PartKind.RELEASE_BEARING, "release-bearing", "release bearing", TypedClutch.ID),
                    clutch.pointer());
            add(PartKind.CLUTCH_HOUSING, "clutch-housing", "clutch housing", clutch.pointer());
            if (isInline(clutch.drives().id())) {
                ledger.add(
                        fitting(
                                PartKind.FLYWHEEL_BEARING,
                                "flywheel-bearing",
                                "flywheel pilot bearing",
                                clutch.drives().id()),
                        clutch.pointer());
            }
        });
    }

    /** A box whose input shaft carries the nose of another is long, and its input shaft has its own nose in the flywheel. */
    private boolean isInline(String input) {
        return ledger.all(Bearing.class)
                .anyMatch(bearing -> bearing.part().outer().equals(input)
                        && ledger.all(Shaft.class)
                                .anyMatch(shaft ->
                                        shaft.part().id().equals(bearing.part().inner())));
    }

    private void aroundTheCase() {
        String pointer = layout.id().pointer();
        add(PartKind.MOUNTINGS, "mountings", "mountings", pointer);
        add(PartKind.OIL, "oil", "oil", pointer);
        add(PartKind.SEALS, "seals", "seals and gaskets", pointer);
        add(PartKind.BREATHER, "breather", "breather", pointer);
        add(PartKind.BOX_CASE, "box-case", "box case", pointer);
        boolean read = layout.road()
                .filter(road -> road.facts().speedRead().isPresent())
                .isPresent();
        if (read) {
            add(
                    PartKind.SPEED_READING,
                    "speed-reading",
                    "speed reading",
                    layout.road().orElseThrow().pointer());
        }
    }

    private void add(PartKind kind, String id, String name, String pointer) {
        ledger.add(new Fitting(ledger.named(id, name), kind, Optional.empty(), Optional.empty()), pointer);
    }

    private Fitting fitting(PartKind kind, String id, String name, String of) {
        return new Fitting(ledger.named(id, name), kind, Optional.of(of), Optional.empty());
    }
}
