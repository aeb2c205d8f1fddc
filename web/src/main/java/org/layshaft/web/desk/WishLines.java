package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.involute.InvoluteGear;
import org.layshaft.engine.involute.InvolutePair;
import org.layshaft.engine.swap.Proposal;
import org.layshaft.engine.swap.Target;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

/** Now, wished and offered beside each other. */
public final class WishLines {
    /** So many teeth are offered where everything is not wanted. */
    public static final int MOST = 12;

    private static final String NONE = "–";

    private final Layout layout;
    private final WishAnswer.OfGear wish;
    private final Units units;
    private final Map<String, Fraction> ratios;

    private WishLines(Layout layout, WishAnswer.OfGear wish, Units units) {
        this.layout = layout;
        this.wish = wish;
        this.units = units;
        this.ratios = wish.ratios();
    }

    /** @param most so many offers, best first */
    public static List<WishLine> of(Layout layout, WishAnswer.OfGear wish, int most, Units units) {
        WishLines lines = new WishLines(layout, wish, units);
        List<WishLine> all = new ArrayList<>();
        wish.pair().value().ifPresent(pair -> all.add(lines.now(pair)));
        wish.target().value().ifPresent(target -> all.add(lines.wished(target)));
        List<Proposal> proposals = wish.proposals().value().orElse(List.of());
        for (int place = 0; place < Math.min(most, proposals.size()); place++) {
            all.add(lines.offered(place + 1, proposals.get(place)));
        }
        return all;
    }

    private WishLine now(Mesh pair) {
        Gear first = layout.gear(pair.first());
        Gear second = layout.gear(pair.second());
        OptionalDouble module = first.moduleMm().isPresent() ? first.moduleMm() : second.moduleMm();
        OptionalDouble centre = wish.rules().centreMm();
        Optional<Double> shift = module.isPresent() && centre.isPresent()
                ? shiftSum(first, second, module.getAsDouble(), centre.getAsDouble())
                : Optional.empty();
        return line(
                "now",
                "%d/%d".formatted(first.teeth(), second.teeth()),
                shown(module, 3),
                shown(OptionalDouble.of(first.helixDeg()), 2),
                centre.isPresent() ? units.length(decimal(centre.getAsDouble(), 3)) : NONE,
                shift.map(sum -> decimal(sum, 3)).orElse(NONE),
                wish.now(),
                NONE);
    }

    private static Optional<Double> shiftSum(Gear first, Gear second, double moduleMm, double centreMm) {
        OptionalDouble sum = InvolutePair.shiftSumAt(uncut(first, moduleMm), uncut(second, moduleMm), centreMm);
        return sum.isPresent() ? Optional.of(sum.getAsDouble()) : Optional.empty();
    }

    private static InvoluteGear uncut(Gear gear, double moduleMm) {
        return InvoluteGear.of(gear.form(), gear.teeth(), moduleMm, gear.pressureAngleDeg(), gear.helixDeg(), 0);
    }

    private WishLine wished(Target target) {
        String range = target.open()
                ? "between %s and %s".formatted(Decimals.three(target.least()), Decimals.three(target.most()))
                : target.least().equals(target.most())
                        ? Decimals.three(target.ideal())
                        : "%s, from %s to %s"
                                .formatted(
                                        Decimals.three(target.ideal()),
                                        Decimals.three(target.least()),
                                        Decimals.three(target.most()));
        String exact = target.open() ? NONE : WishWording.exact(target.ideal());
        return new WishLine("wished", NONE, NONE, NONE, NONE, NONE, range, exact, NONE, NONE, NONE);
    }

    private WishLine offered(int place, Proposal proposal) {
        return line(
                "offered " + place,
                "%d/%d".formatted(proposal.firstTeeth(), proposal.secondTeeth()),
                decimal(proposal.moduleMm(), 3),
                decimal(proposal.helixDeg(), 2),
                units.length(decimal(proposal.centreMm(), 3)),
                decimal(proposal.shiftSum(), 3),
                proposal.ratio(),
                WishWording.misses(wish, proposal.ratio()));
    }

    private WishLine line(
            String what,
            String teeth,
            String module,
            String helix,
            String centre,
            String shift,
            Fraction ratio,
            String misses) {
        return new WishLine(
                what,
                teeth,
                module,
                helix,
                centre,
                shift,
                Decimals.three(ratio),
                WishWording.exact(ratio),
                misses,
                neighbour(ratio, true)
                        .map(below -> Decimals.three(below.over(ratio)))
                        .orElse(NONE),
                neighbour(ratio, false)
                        .map(above -> Decimals.three(ratio.over(above)))
                        .orElse(NONE));
    }

    /** The nearest other forward gear on that side; a gear that is passed changes places with it. */
    private Optional<Fraction> neighbour(Fraction ratio, boolean lower) {
        if (ratios.get(wish.gear()).signum() < 0) {
            return Optional.empty();
        }
        List<Fraction> others = ratios.entrySet().stream()
                .filter(entry -> !entry.getKey().equals(wish.gear()))
                .map(Map.Entry::getValue)
                .filter(other -> other.signum() > 0)
                .toList();
        return lower
                ? others.stream().filter(other -> other.compareTo(ratio) > 0).min(Comparator.naturalOrder())
                : others.stream().filter(other -> other.compareTo(ratio) < 0).max(Comparator.naturalOrder());
    }

    private static String shown(OptionalDouble number, int decimals) {
        return number.isPresent() ? decimal(number.getAsDouble(), decimals) : NONE;
    }

    private static String decimal(double number, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", number);
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0") : text;
    }
}
