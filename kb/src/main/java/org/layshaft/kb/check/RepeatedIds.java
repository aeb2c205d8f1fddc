package org.layshaft.kb.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.parts.BuiltPart;
import org.layshaft.kb.typed.TypedLayout;

/** Parts that share an id, supplied parts included. */
final class RepeatedIds implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Map<String, String> first = new HashMap<>();
        Set<String> told = new HashSet<>();
        for (BuiltPart part : built.parts()) {
            // A second fork for one sleeve is told as a sleeve on two rails.
            if (part.part() instanceof Fork) {
                continue;
            }
            String id = part.part().id();
            String before = first.putIfAbsent(id, part.pointer());
            if (before != null && told.add(part.pointer())) {
                report.broken(
                        part.pointer(),
                        "The id '%s' is used twice, first on line %d.".formatted(id, report.line(before)),
                        id,
                        "Give one of the two another id; supplied parts such as 3-4-fork have ids too.");
            }
            if (id.equals(Bearing.CASE)) {
                report.broken(
                        part.pointer(), "The id 'case' stands for the case of the box.", id, "Give it another id.");
            }
        }
    }
}
