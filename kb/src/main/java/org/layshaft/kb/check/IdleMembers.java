package org.layshaft.kb.check;

import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.EffectiveSides;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMember;
import org.layshaft.kb.typed.TypedSleeve;

/** Sleeves and sliding gears that engage nothing on either side. */
final class IdleMembers implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        for (TypedMember member : layout.members()) {
            if (EffectiveSides.of(member, layout).isEmpty()) {
                String kind = member instanceof TypedSleeve ? "sleeve" : "sliding gear";
                report.broken(
                        member.pointer(),
                        "The %s '%s' engages nothing on either side.".formatted(kind, member.base()),
                        member.base(),
                        member instanceof TypedSleeve
                                ? "Put it next to a free gear, or name what it engages with 'front' or 'rear'."
                                : "Say what it engages with 'front' or 'rear', as {\"meshes\": …}.");
            }
        }
    }
}
