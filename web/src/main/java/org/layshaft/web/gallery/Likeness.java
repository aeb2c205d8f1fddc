package org.layshaft.web.gallery;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Box.DerivedGear;
import org.layshaft.engine.api.Box.Push;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.api.PathStep;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.Joint;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.ShiftMember;

/**
 * What a layout is like, all of it derived from its parts and from the gears that it comes to.
 *
 * @param forward how many forward speeds, those that differ in nothing but a lock counted once
 * @param reverse how many speeds backward, counted likewise
 * @param shafts how many shafts turn in their places: neither held spindles nor what is carried round, nor half-shafts
 */
public record Likeness(Box box, Family family, int forward, int reverse, int shafts, ReverseBy reverseBy) {

    public static Likeness of(Box box) {
        int forward = count(box, Direction.FORWARD);
        int reverse = count(box, Direction.REVERSE);
        return new Likeness(box, family(box, forward), forward, reverse, shafts(box.layout()), reverseBy(box));
    }

    public Layout layout() {
        return box.layout();
    }

    private static int count(Box box, Direction direction) {
        return (int) box.gears().stream()
                .filter(gear -> gear.direction() == direction)
                .map(DerivedGear::ratio)
                .distinct()
                .count();
    }

    private static int shafts(Layout layout) {
        return layout.all(Shaft.class)
                .filter(shaft -> !shaft.held() && shaft.carriedBy().isEmpty())
                .mapToInt(Shaft::count)
                .sum();
    }

    private static Family family(Box box, int forward) {
        Layout layout = box.layout();
        boolean toWheels =
                layout.all(Differential.class).anyMatch(each -> each.ringGear().isPresent());
        if (toWheels) {
            boolean joined = layout.all(Joint.class).findAny().isPresent();
            return joined ? Family.VEHICLE : forward > 1 && shifts(box) ? Family.TRANSAXLE : Family.AXLE;
        }
        if (layout.outputs().size() > 1) {
            return Family.TRANSFER;
        }
        return box.gears().stream().anyMatch(gear -> isDirect(gear, layout)) ? Family.INLINE : Family.OFFSET;
    }

    /** Whether gears differ in their ratios, and not only in what is locked. */
    private static boolean shifts(Box box) {
        return box.gears().stream().map(DerivedGear::ratio).distinct().count() > 1;
    }

    private static ReverseBy reverseBy(Box box) {
        Layout layout = box.layout();
        return box.gears().stream()
                .filter(gear -> gear.direction() == Direction.REVERSE)
                .flatMap(gear -> gear.first().stream())
                .findFirst()
                .map(push -> reverseBy(layout, push))
                .orElse(ReverseBy.NONE);
    }

    private static ReverseBy reverseBy(Layout layout, Push push) {
        Optional<Engagement> engages = engages(layout, push);
        if (engages.filter(Engagement.Meshes.class::isInstance).isPresent()) {
            boolean idler = layout.find(Gear.class, push.member())
                    .filter(gear -> gear.seat() == Seat.SLIDING)
                    .flatMap(gear -> layout.find(Shaft.class, gear.carrier()))
                    .filter(Shaft::held)
                    .isPresent();
            return idler ? ReverseBy.SLIDING_IDLER : ReverseBy.SLIDING_GEAR;
        }
        return ringed(engages) ? ReverseBy.SYNCHRONISED_SLEEVE : ReverseBy.DOG_SLEEVE;
    }

    private static Optional<Engagement> engages(Layout layout, Push push) {
        return layout.member(push.member()).at(push.side());
    }

    private static boolean ringed(Optional<Engagement> engages) {
        return engages.filter(each -> each instanceof Engagement.Couples couples
                        && couples.ring().isPresent())
                .isPresent();
    }

    /** Straight through: no two gears in mesh carry it on. */
    private static boolean isDirect(DerivedGear gear, Layout layout) {
        return gear.direction() == Direction.FORWARD
                && gear.ratio().equals(Fraction.ONE)
                && layout.everyMesh()
                        .noneMatch(mesh -> inARow(gear.path(), mesh.first(), mesh.second())
                                || inARow(gear.path(), mesh.second(), mesh.first()));
    }

    private static boolean inARow(List<PathStep> path, String one, String next) {
        for (int i = 1; i < path.size(); i++) {
            if (path.get(i - 1).part().equals(one) && path.get(i).part().equals(next)) {
                return true;
            }
        }
        return false;
    }

    /** A forward gear goes straight through. */
    boolean direct() {
        return box.gears().stream().anyMatch(gear -> isDirect(gear, layout()));
    }

    /** In the highest gear something in front of the final drive turns faster than the input: that which drives it. */
    boolean overdrive() {
        return box.gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .min(Comparator.comparing(DerivedGear::ratio))
                .filter(top -> leaves(top).compareTo(Fraction.ONE) > 0)
                .isPresent();
    }

    /** Turns, for one of the input, of what leaves the gears: the shaft of the final-drive pinion, or the output. */
    private Fraction leaves(DerivedGear gear) {
        Layout layout = layout();
        List<Fraction> pinions = layout.finalDrives().stream()
                .flatMap(drive -> drive.ringGear().stream())
                .flatMap(ring ->
                        layout.everyMesh().filter(mesh -> mesh.joins(ring)).map(mesh -> mesh.other(ring)))
                .filter(gear.motion().carrying()::contains)
                .flatMap(pinion -> gear.motion().speedOf(layout.gear(pinion).carrier()).stream())
                .map(Fraction::absolute)
                .distinct()
                .toList();
        return pinions.size() == 1 ? pinions.get(0) : gear.ratio().inverse();
    }

    boolean synchronised() {
        return forwardPushes().allMatch(push -> ringed(engages(layout(), push)))
                && forwardPushes().findAny().isPresent();
    }

    boolean slidIntoMesh() {
        return forwardPushes()
                .anyMatch(push -> engages(layout(), push)
                        .filter(Engagement.Meshes.class::isInstance)
                        .isPresent());
    }

    private Stream<Push> forwardPushes() {
        return box.gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .flatMap(gear -> gear.first().stream());
    }

    boolean epicyclic() {
        return layout().all(Shaft.class).anyMatch(shaft -> shaft.carriedBy().isPresent());
    }

    boolean hasMesh(MeshKind... kinds) {
        return layout().everyMesh().anyMatch(mesh -> List.of(kinds).contains(mesh.kind()));
    }

    boolean limitedSlip() {
        return layout().all(Differential.class)
                .anyMatch(each -> each.limitedSlip().isPresent());
    }

    boolean locks() {
        return layout().members().stream()
                .flatMap(member -> member.sides().values().stream())
                .anyMatch(each -> each instanceof Engagement.Couples couples
                        && layout().find(Differential.class, couples.to()).isPresent());
    }

    /** How many clutches are closed one at a time inside. */
    long clutchesInside() {
        return layout().members().stream()
                .map(ShiftMember::part)
                .filter(part -> layout().find(Clutch.class, part).isPresent())
                .count();
    }

    boolean has(PartKind kind) {
        return layout().parts().values().stream().anyMatch(part -> part.kind() == kind);
    }

    boolean isKeptApartBy(InterlockKind kind) {
        return layout().all(Interlock.class).anyMatch(interlock -> interlock.form() == kind);
    }

    boolean differential() {
        return has(PartKind.DIFFERENTIAL);
    }

    boolean takeOff() {
        return !layout().takeOffs().isEmpty();
    }

    /** Whether gears are put together from the places of several levers. */
    boolean severalLevers() {
        return layout().levers().size() > 1;
    }
}
