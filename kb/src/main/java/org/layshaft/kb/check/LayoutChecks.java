package org.layshaft.kb.check;

import java.util.List;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;

/** Runs every check on a layout. */
public final class LayoutChecks {
    private static final List<LayoutCheck> ALL = List.of();

    private LayoutChecks() {}

    public static void run(TypedLayout layout, BuiltLayout built, Report report) {
        ALL.forEach(check -> check.run(layout, built, report));
    }
}
