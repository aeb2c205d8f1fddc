package org.layshaft.kb.check;

import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedDifferential;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedShaft;

/** A sleeve that locks a differential sits on one of its sides, or at least in line with it. */
final class DifferentialLocks implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Axes axes = Axes.besidesCouplings(layout);
        Coupling.all(layout)
                .forEach(coupling -> layout.differential(coupling.to())
                        .ifPresent(
                                differential -> layout.shaftOf(coupling.member().id())
                                        .ifPresent(own -> check(coupling, own, differential, axes, report))));
    }

    private static void check(
            Coupling coupling, TypedShaft own, TypedDifferential differential, Axes axes, Report report) {
        Optional<String> driving = differential.on().map(Reference::id);
        boolean liesBeside = Stream.concat(Stream.of(differential.id()), differential.sideIds().stream())
                .anyMatch(shaft -> axes.lieSideBySide(own.id(), shaft));
        if (driving.filter(own.id()::equals).isPresent()) {
            report.broken(
                    coupling.pointer(),
                    "'%s' drives the case of '%s' anyway: there is nothing to couple."
                            .formatted(own.id(), differential.id()),
                    coupling.to(),
                    "Put the sleeve on one of the two sides, or name there what else it couples.");
        } else if (liesBeside || !axes.lineOfShaft(own.id()).equals(axes.lineOf(differential.id()))) {
            report.doubtful(
                    coupling.pointer(),
                    "Nothing says that '%s' lies in line with the differential '%s'."
                            .formatted(own.id(), differential.id()),
                    coupling.to(),
                    "Put the sleeve on one of the two sides, or type the bearing that one shaft has in the other.");
        }
    }
}
