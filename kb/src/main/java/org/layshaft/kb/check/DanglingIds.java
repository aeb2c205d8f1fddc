package org.layshaft.kb.check;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.json.Nearest;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedBearing;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMember;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedShaft;
import org.layshaft.kb.typed.TypedSide;

/** Ids that are mentioned and stand nowhere. */
final class DanglingIds implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        List<String> gears = layout.gears().map(TypedGear::id).toList();
        List<String> shafts = layout.shafts().stream().map(TypedShaft::id).toList();
        List<String> members = layout.members().stream().map(TypedMember::base).toList();
        List<String> parts = built.parts().stream().map(one -> one.part().id()).toList();
        tell("gear", mentionedGears(layout), gears, report);
        tell("shaft", mentionedShafts(layout), shafts, report);
        tell("part", layout.names().keySet().stream(), parts, report);
        for (TypedRail rail : layout.selector().rails()) {
            tell("sleeve or sliding gear", rail.moves().stream(), members, report);
        }
    }

    private static Stream<Reference> mentionedGears(TypedLayout layout) {
        Stream<Reference> meshing = layout.gears().flatMap(gear -> gear.meshes().stream());
        Stream<Reference> engaged = layout.members().stream()
                .flatMap(member -> member.sides().values().stream())
                .flatMap(DanglingIds::mentioned);
        return Stream.concat(meshing, engaged);
    }

    private static Stream<Reference> mentioned(TypedSide side) {
        if (side instanceof TypedSide.Couples couples) {
            return Stream.of(couples.gear());
        }
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
        return Stream.concat(pilots, driven);
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
