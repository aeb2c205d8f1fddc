package org.layshaft.kb.check;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.MeshKind;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedGear;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedMesh;
import org.layshaft.kb.typed.TypedShaft;

/**
 * Planets that cannot all be put in at equal angles.
 *
 * <p>The carrier is turned from one of n planets to the next. A wheel of z₁ teeth then passes z₁/n of them, another of z₂
 * passes z₂/n the same way or the other; the planet fits in again where the two together are whole teeth. For a sun and a
 * ring on one planet (z₁ + z₂)/n must be whole, for two suns, or a ring beyond a second pinion, (z₁ − z₂)/n. A stepped
 * planet, in mesh by p₁ and p₂ teeth, asks that of (z₁p₂ ± z₂p₁)/(n·g), g being the greatest divisor of p₁ and p₂.
 */
final class PlanetSpacing implements LayoutCheck {
    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        List<TypedShaft> several = layout.shafts().stream()
                .filter(shaft -> shaft.carriedBy().isPresent() && shaft.count() > 1)
                .toList();
        for (int place = 0; place < several.size(); place++) {
            TypedShaft shaft = several.get(place);
            List<TypedShaft> later = several.subList(place + 1, several.size());
            Stream.concat(onOneShaft(shaft, layout), acrossTwoShafts(shaft, later, layout))
                    .filter(span -> !span.fits())
                    .findFirst()
                    .ifPresent(span -> tell(shaft, span, report));
        }
    }

    /** A wheel about the carrier's own line, and the gear by which a planet is in mesh with it. */
    private record Contact(TypedGear wheel, TypedGear planet, MeshKind kind) {}

    /**
     * Two wheels that the same planets, or pairs of planets, roll on.
     *
     * @param together whether their teeth add up
     */
    private record Span(Contact one, Contact other, boolean together, int count) {
        boolean fits() {
            return sum() % divisor() == 0;
        }

        private long sum() {
            long first = teeth(one.wheel()) * (isStepped() ? teeth(other.planet()) : 1);
            long second = teeth(other.wheel()) * (isStepped() ? teeth(one.planet()) : 1);
            return together ? first + second : first - second;
        }

        private long divisor() {
            return isStepped() ? count * common() : count;
        }

        private long common() {
            return BigInteger.valueOf(teeth(one.planet()))
                    .gcd(BigInteger.valueOf(teeth(other.planet())))
                    .longValue();
        }

        private boolean isStepped() {
            return teeth(one.planet()) != teeth(other.planet());
        }

        String written() {
            String sign = together ? "+" : "−";
            String sum = isStepped()
                    ? "%d × %d %s %d × %d"
                            .formatted(
                                    teeth(one.wheel()),
                                    teeth(other.planet()),
                                    sign,
                                    teeth(other.wheel()),
                                    teeth(one.planet()))
                    : "%d %s %d".formatted(teeth(one.wheel()), sign, teeth(other.wheel()));
            String divisor = isStepped() ? "(%d × %d)".formatted(count, common()) : String.valueOf(count);
            BigDecimal quotient =
                    BigDecimal.valueOf(sum()).divide(BigDecimal.valueOf(divisor()), 2, RoundingMode.HALF_UP);
            return "(%s) / %s = %s"
                    .formatted(sum, divisor, quotient.stripTrailingZeros().toPlainString());
        }
    }

    private static Stream<Span> onOneShaft(TypedShaft shaft, TypedLayout layout) {
        List<Contact> contacts = contacts(shaft, layout);
        return contacts.stream()
                .flatMap(one -> contacts.subList(contacts.indexOf(one) + 1, contacts.size()).stream()
                        .map(other -> new Span(one, other, one.kind() != other.kind(), shaft.count())));
    }

    /** Pairs of pinions, each in mesh with the other by the gear that rolls on its wheel. */
    private static Stream<Span> acrossTwoShafts(TypedShaft shaft, List<TypedShaft> later, TypedLayout layout) {
        return later.stream()
                .filter(other -> other.count() == shaft.count())
                .flatMap(other -> contacts(shaft, layout).stream()
                        .flatMap(inner -> contacts(other, layout).stream()
                                .filter(outer -> areInMesh(inner.planet(), outer.planet(), layout))
                                .map(outer -> new PairOfPinions(inner, outer).span(shaft.count()))));
    }

    /** The second pinion turns the sense round; how many teeth it has does not matter. */
    private record PairOfPinions(Contact inner, Contact outer) {
        Span span(int count) {
            Contact asOne = new Contact(outer.wheel(), inner.planet(), outer.kind());
            return new Span(inner, asOne, inner.kind() == outer.kind(), count);
        }
    }

    private static boolean areInMesh(TypedGear one, TypedGear other, TypedLayout layout) {
        return layout.meshes().stream().anyMatch(mesh -> mesh.isBetween(one.id(), other.id()));
    }

    private static List<Contact> contacts(TypedShaft shaft, TypedLayout layout) {
        return layout.meshes().stream()
                .filter(mesh -> mesh.kind() == MeshKind.EXTERNAL || mesh.kind() == MeshKind.INTERNAL)
                .flatMap(mesh -> contact(mesh, shaft, layout).stream())
                .toList();
    }

    private static Optional<Contact> contact(TypedMesh mesh, TypedShaft shaft, TypedLayout layout) {
        Optional<TypedGear> first = layout.gear(mesh.first());
        Optional<TypedGear> second = layout.gear(mesh.second());
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        boolean firstIsPlanet = shaft.along().contains(first.get());
        TypedGear planet = firstIsPlanet ? first.get() : second.get();
        TypedGear wheel = firstIsPlanet ? second.get() : first.get();
        boolean counts = shaft.along().contains(planet)
                && layout.shaftOf(wheel.id()).flatMap(TypedShaft::carriedBy).isEmpty()
                && Stream.of(planet, wheel).allMatch(gear -> gear.teeth().orElse(0) > 0);
        return counts ? Optional.of(new Contact(wheel, planet, mesh.kind())) : Optional.empty();
    }

    private static long teeth(TypedGear gear) {
        return gear.teeth().getAsInt();
    }

    private static void tell(TypedShaft shaft, Span span, Report report) {
        report.doubtful(
                Pointers.child(shaft.pointer(), "count"),
                "%d planets '%s' cannot stand at equal angles between '%s' and '%s'."
                        .formatted(
                                shaft.count(),
                                shaft.id(),
                                span.one().wheel().id(),
                                span.other().wheel().id()),
                span.written(),
                "Count the teeth and the planets again: this must be whole, unless the angles between them differ.");
    }
}
