package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.Map;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedInnerClutch;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMember;
import org.layshaft.kb.typed.TypedRail;

/** Every sleeve and sliding gear is moved by one rail, and every rail moves something. */
final class MembersOnRails implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Map<String, Reference> first = new HashMap<>();
        for (TypedRail rail : layout.rails()) {
            if (rail.moves().isEmpty()) {
                report.broken(
                        rail.pointer(),
                        "The rail '%s' moves nothing.".formatted(rail.base()),
                        rail.base(),
                        "Name under 'moves' the sleeves or sliding gears that it moves, or take it out.");
            }
            for (Reference moved : rail.moves()) {
                Reference before = first.putIfAbsent(moved.id(), moved);
                if (before != null) {
                    report.broken(
                            moved.pointer(),
                            "'%s' is moved by two rails, first on line %d."
                                    .formatted(moved.id(), report.line(before.pointer())),
                            moved.id(),
                            "Leave it to one of the two.");
                }
            }
        }
        for (TypedMember member : layout.members()) {
            if (!(member instanceof TypedInnerClutch) && !first.containsKey(member.base())) {
                report.broken(
                        member.pointer(),
                        "No rail moves '%s'.".formatted(member.base()),
                        member.base(),
                        "Add a rail for it to the 'rails' of the selector or of one of its 'levers', or leave 'rails' out to have one for each.");
            }
        }
    }
}
