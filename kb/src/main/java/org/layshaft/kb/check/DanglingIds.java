package org.layshaft.kb.check;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedBearing;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedDogs;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedInnerClutch;
import org.layshaft.kb.typed.TypedItem;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMember;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;
import org.layshaft.kb.typed.TypedShaft;
import org.layshaft.kb.typed.TypedSide;

/** Ids that are mentioned and stand nowhere. */
final class DanglingIds implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        List<String> gears = layout.gears().map(TypedGear::id).toList();
        List<String> shafts = layout.shafts().stream().map(TypedShaft::id).toList();
        List<String> clutches =
                innerClutches(layout).map(TypedInnerClutch::base).toList();
        List<String> members = layout.members().stream()
                .filter(member -> !(member instanceof TypedInnerClutch))
                .map(TypedMember::base)
                .toList();
        List<String> parts = built.parts().stream().map(one -> one.part().id()).toList();
        tell("gear", mentionedGears(layout), gears, report);
        tell("gear, dog ring or differential", coupled(layout), couplable(layout, gears), report);
        tell("shaft", mentionedShafts(layout), shafts, report);
        tell("part", layout.names().keySet().stream(), parts, report);
        for (TypedRail rail : layout.rails()) {
            tell("sleeve or sliding gear", rail.moves().stream(), members, report);
        }
        tell("clutch", layout.levers().stream().flatMap(lever -> lever.clutches().stream()), clutches, report);
        for (TypedSelector selector : layout.selectors()) {
            List<String> rails = selector.rails().stream().map(TypedRail::base).toList();
            tell(
                    "rail of this lever",
                    selector.drum().stream().flatMap(place -> place.pushes().keySet().stream()),
                    rails,
                    report);
        }
    }

    private static Stream<TypedInnerClutch> innerClutches(TypedLayout layout) {
        return layout.members().stream()
                .filter(TypedInnerClutch.class::isInstance)
                .map(TypedInnerClutch.class::cast);
    }

    private static Stream<Reference> mentionedGears(TypedLayout layout) {
        Stream<Reference> meshing =
                layout.gears().flatMap(gear -> Stream.concat(gear.meshes().stream(), gear.chained().stream()));
        Stream<Reference> engaged = layout.members().stream()
                .flatMap(member -> member.sides().values().stream())
                .flatMap(DanglingIds::mentioned);
        return Stream.concat(meshing, engaged);
    }

    private static Stream<Reference> mentioned(TypedSide side) {
        return side instanceof TypedSide.Meshes meshes ? meshes.gears().stream() : Stream.empty();
    }

    private static Stream<Reference> mentionedShafts(TypedLayout layout) {
        Stream<Reference> pilots = layout.shafts().stream()
                .flatMap(shaft -> shaft.along().stream())
                .filter(TypedBearing.class::isInstance)
                .flatMap(bearing -> ((TypedBearing) bearing).in().stream());
        Stream<Reference> driven = layout
                .clutch()
                .filter(clutch -> !clutch.drives().equals(layout.input()))
                .map(clutch -> clutch.drives())
                .stream();
        Stream<Reference> carriers = layout.shafts().stream().flatMap(shaft -> shaft.carriedBy().stream());
        Stream<Reference> closed = innerClutches(layout).map(TypedInnerClutch::drives);
        Stream<Reference> differentials = layout.differentials().stream().flatMap(DanglingIds::mentionedShafts);
        return Stream.of(pilots, driven, carriers, closed, differentials).flatMap(mentions -> mentions);
    }

    private static Stream<Reference> mentionedShafts(TypedDifferential differential) {
        Stream<Reference> sides = differential.sides() instanceof TypedDifferential.Sides.Shafts shafts
                ? shafts.references().stream()
                : Stream.empty();
        return Stream.concat(differential.on().stream(), sides);
    }

    private static Stream<Reference> coupled(TypedLayout layout) {
        return layout.members().stream()
                .flatMap(member -> member.sides().values().stream())
                .filter(TypedSide.Couples.class::isInstance)
                .map(side -> ((TypedSide.Couples) side).to());
    }

    private static List<String> couplable(TypedLayout layout, List<String> gears) {
        Stream<String> dogs = layout.shafts().stream()
                .flatMap(shaft -> shaft.along().stream())
                .filter(TypedDogs.class::isInstance)
                .map(TypedItem::id);
        return Stream.of(gears.stream(), dogs, layout.differentials().stream().map(TypedDifferential::id))
                .flatMap(ids -> ids)
                .toList();
    }

    private static void tell(String kind, Stream<Reference> mentions, Collection<String> known, Report report) {
        mentions.filter(mention -> !known.contains(mention.id()))
                .forEach(mention -> report.broken(
                        mention.pointer(),
                        "There is no %s with the id '%s'.".formatted(kind, mention.id()),
                        mention.id(),
                        Nearest.advice(mention.id(), known)));
    }
}
