package org.layshaft.kb.check;

import java.util.stream.Stream;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedInnerClutch;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** Shafts that nothing but bearings sits on. */
final class EmptyShafts implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedShaft shaft : layout.shafts()) {
            if (shaft.workingItems().isEmpty() && !isTiedOtherwise(shaft, layout)) {
                report.broken(
                        shaft.pointer(),
                        "No gear or sleeve sits on the shaft '%s'.".formatted(shaft.id()),
                        shaft.id(),
                        "Type under 'along' what sits on it, or take the shaft out.");
            }
        }
    }

    /** A carrier of planets, or a shaft that a differential, a clutch or a join ties. */
    private static boolean isTiedOtherwise(TypedShaft shaft, TypedLayout layout) {
        Stream<String> carriers = layout.shafts().stream()
                .flatMap(each -> each.carriedBy().stream())
                .map(Reference::id);
        Stream<String> differentials = layout.differentials().stream()
                .flatMap(each -> Stream.concat(each.sideIds().stream(), each.on().map(Reference::id).stream()));
        Stream<String> closed = layout.members().stream()
                .filter(TypedInnerClutch.class::isInstance)
                .map(clutch -> ((TypedInnerClutch) clutch).drives().id());
        Stream<String> joined = layout.joins().stream()
                .flatMap(join -> Stream.of(join.from().id(), join.to().id()));
        return Stream.of(carriers, differentials, closed, joined)
                .flatMap(ids -> ids)
                .anyMatch(shaft.id()::equals);
    }
}
