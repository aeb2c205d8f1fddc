package org.layshaft.kb.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;

/**
 * Pairs between the same two lines of shafts that would stand at different distances.
 *
 * <p>The reference centre distance is m (z₁ + z₂) / (2 cos β), with the normal module m and the helix angle β. The real
 * one may differ from it by profile shift; what no usual shift makes good is broken, what needs much is doubtful. The
 * pair that most others agree with is the measure, so that the odd one is blamed.
 */
final class CentreDistances implements LayoutCheck {
    /** As a share of the module. */
    private static final double BROKEN = 0.75;

    private static final double DOUBTFUL = 0.25;

    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        Axes axes = Axes.of(layout);
        Map<Set<String>, List<Pair>> byLines = new LinkedHashMap<>();
        for (TypedMesh mesh : layout.meshes()) {
            if (mesh.kind() == MeshKind.CHAIN || mesh.kind().isBevel()) {
                continue;
            }
            axes.linesOf(mesh)
                    .ifPresent(lines -> pair(mesh, layout)
                            .ifPresent(pair -> byLines.computeIfAbsent(lines, key -> new ArrayList<>())
                                    .add(pair)));
        }
        byLines.forEach((lines, pairs) -> compare(pairs, report));
    }

    private record Pair(TypedMesh mesh, int teeth, double moduleMm, double distanceMm) {
        boolean agreesWith(Pair other) {
            return Math.abs(distanceMm - other.distanceMm) <= DOUBTFUL * moduleMm;
        }

        String written() {
            return "%s (%d teeth %s) %s mm"
                    .formatted(
                            mesh.written(),
                            teeth,
                            mesh.kind() == MeshKind.INTERNAL ? "apart" : "together",
                            Millimetres.toHundredth(distanceMm));
        }
    }

    /** Empty where a gear, its teeth or its module are not known, or the two are not alike. */
    private static Optional<Pair> pair(TypedMesh mesh, TypedLayout layout) {
        return layout.gear(mesh.first())
                .flatMap(first -> layout.gear(mesh.second())
                        .filter(second -> areAlike(first, second))
                        .map(second -> {
                            int teeth = togetherOrApart(mesh, first, second);
                            double moduleMm = first.moduleMm().getAsDouble();
                            double distanceMm = moduleMm * teeth / (2 * Math.cos(Math.toRadians(first.helixDeg())));
                            return new Pair(mesh, teeth, moduleMm, distanceMm);
                        }));
    }

    /** The sum of the teeth, for a gear inside a ring their difference. */
    private static int togetherOrApart(TypedMesh mesh, TypedGear first, TypedGear second) {
        int one = first.teeth().getAsInt();
        int other = second.teeth().getAsInt();
        return mesh.kind() == MeshKind.INTERNAL ? Math.abs(one - other) : one + other;
    }

    private static boolean areAlike(TypedGear first, TypedGear second) {
        return first.teeth().isPresent()
                && second.teeth().isPresent()
                && first.moduleMm().isPresent()
                && first.moduleMm().equals(second.moduleMm())
                && Double.compare(first.helixDeg(), second.helixDeg()) == 0;
    }

    private static void compare(List<Pair> pairs, Report report) {
        Pair measure = pairs.stream()
                .max(Comparator.comparingLong(
                        one -> pairs.stream().filter(one::agreesWith).count()))
                .orElseThrow();
        for (Pair pair : pairs) {
            double missing = (measure.distanceMm() - pair.distanceMm()) / pair.moduleMm();
            String what = "The reference centre distances of two pairs between the same shafts differ: %s, %s."
                    .formatted(pair.written(), measure.written());
            String value = Millimetres.toHundredth(pair.distanceMm()) + " mm";
            String shift = Millimetres.toHundredth(missing);
            if (Math.abs(missing) > BROKEN) {
                report.broken(
                        pair.mesh().pointer(),
                        what,
                        value,
                        "Count the teeth again, and look at module and helix angle: a profile shift of %s together is more than gears take."
                                .formatted(shift));
            } else if (Math.abs(missing) > DOUBTFUL) {
                report.doubtful(
                        pair.mesh().pointer(),
                        what,
                        value,
                        "It needs profile shift of about %s together; if that is not so, count the teeth again."
                                .formatted(shift));
            }
        }
    }
}
