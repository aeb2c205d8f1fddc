package org.layshaft.web.desk;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.GearRules;
import org.layshaft.engine.swap.Proposal;
import org.layshaft.engine.swap.SetOffer;
import org.layshaft.engine.swap.Target;
import org.layshaft.engine.swap.WishedSets;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.web.desk.WishAnswer.AxleChoice;
import org.layshaft.web.desk.WishAnswer.DrivenChoice;

/** What meets a wish, in sentences. */
public final class WishWording {
    /** So many of the nearest that do not serve are named. */
    public static final int MOST_OTHERS = 5;

    private static final Fraction HUNDRED = Fraction.of(100);
    private static final int LONGEST_EXACT = 14;

    private WishWording() {}

    /** Everything that is answered, but for the tables. */
    public static List<String> says(WishAnswer answer) {
        List<String> says = new ArrayList<>();
        if (answer.others() > 0) {
            says.add("Told of %s; %d more %s of %s may come out otherwise: choose one, or give a serial number."
                    .formatted(
                            FitWording.of(answer.built().orElseThrow()),
                            answer.others(),
                            answer.others() == 1 ? "build" : "builds",
                            answer.layout().name()));
        }
        answer.gear().ifPresent(wish -> says.addAll(ofGear(answer.layout(), wish)));
        answer.axle().ifPresent(wish -> says.addAll(ofAxle(wish)));
        answer.reading().ifPresent(wish -> says.addAll(ofReading(wish)));
        return says;
    }

    private static List<String> ofGear(Layout layout, WishAnswer.OfGear wish) {
        List<String> says = new ArrayList<>();
        says.add("%s is %s now. %s"
                .formatted(capital(Names.gearName(wish.gear())), Decimals.three(wish.now()), wished(wish)));
        says.add(teeth(layout, wish));
        says.add(sets(wish.sets()));
        return says;
    }

    private static String wished(WishAnswer.OfGear wish) {
        return wish.target()
                .map(target -> wish.nearest()
                        ? "Wished is one between %s and %s; what moves it least comes first."
                                .formatted(Decimals.three(target.least()), Decimals.three(target.most()))
                        : "Wished is %s, from %s to %s being near enough."
                                .formatted(
                                        Decimals.three(target.ideal()),
                                        Decimals.three(target.least()),
                                        Decimals.three(target.most())))
                .value()
                .orElseGet(() -> "What is wished %s.".formatted(why(wish.target())));
    }

    private static String teeth(Layout layout, WishAnswer.OfGear wish) {
        List<Proposal> proposals = wish.proposals().value().orElse(null);
        if (proposals == null) {
            return "Which teeth would do it %s.".formatted(why(wish.proposals()));
        }
        Mesh pair = wish.pair().value().orElseThrow();
        String gears = "%s and %s"
                .formatted(
                        layout.gear(pair.first()).name(),
                        layout.gear(pair.second()).name());
        return switch (proposals.size()) {
            case 0 -> "No teeth of %s do it at the shafts that there are.".formatted(gears);
            case 1 -> "One pair of teeth of %s does it at the shafts that there are.".formatted(gears);
            default ->
                "%d pairs of teeth of %s do it at the shafts that there are, %d of them with the module and helix that are there."
                        .formatted(
                                proposals.size(),
                                gears,
                                proposals.stream()
                                        .filter(proposal -> proposal.unlikeNow() == 0)
                                        .count());
        };
    }

    /** What teeth may be cut. */
    public static String rules(GearRules rules) {
        return "Looked through are modules of ISO 54 from %s to %s mm, and the one that is there; helix angles from %s to %s°,"
                        .formatted(
                                number(rules.modulesMm().get(0)),
                                number(rules.modulesMm().get(rules.modulesMm().size() - 1)),
                                number(rules.helixLeastDeg()),
                                number(rules.helixMostDeg()))
                + " and the one that is there; %d to %d teeth; profile shifts that come to %s to %s, undercut being left out (the bounds are common practice, no source). Where the helix is odd, it is the one with the least shift. How strong the teeth are is not looked into."
                        .formatted(
                                rules.teethLeast(),
                                rules.teethMost(),
                                number(rules.shiftLeast()),
                                number(rules.shiftMost()));
    }

    private static String sets(Telling<WishedSets> told) {
        WishedSets sets = told.value().orElse(null);
        if (sets == null) {
            return "Which sets would do it %s.".formatted(why(told));
        }
        List<SetOffer> serving = sets.serving();
        int meeting = sets.offers().size();
        String looked = "Of %d ways to give gears of this box other teeth from the catalogue, %s the wish"
                .formatted(sets.lookedAt(), meeting == 0 ? "none meets" : meeting == 1 ? "1 meets" : meeting + " meet");
        if (serving.isEmpty()) {
            return meeting == 0 ? looked + "." : looked + ", and none fits.";
        }
        return "%s and %d %s: %s."
                .formatted(
                        looked,
                        serving.size(),
                        serving.size() == 1 ? "fits" : "fit",
                        serving.stream()
                                .limit(MOST_OTHERS)
                                .map(offer -> "%s (%s, %s)"
                                        .formatted(
                                                FitWording.of(offer.serving()
                                                        .placement()
                                                        .set()),
                                                Decimals.three(offer.ratio()),
                                                offer.serving().verdict().spoken()))
                                .collect(Collectors.joining("; ")));
    }

    /** By how much a ratio misses a wish; for one that is to change least, by how much it moves. */
    public static String misses(WishAnswer.OfGear wish, Fraction ratio) {
        Fraction best = wish.target().value().map(Target::ideal).orElse(wish.now());
        Fraction percent = ratio.over(best).minus(Fraction.ONE).times(HUNDRED);
        String off = "%s %%".formatted(Decimals.rounded(percent.absolute(), 2));
        if (wish.nearest()) {
            return "moves it " + off;
        }
        return percent.isZero() ? "met exactly" : "%s too %s".formatted(off, percent.signum() > 0 ? "high" : "low");
    }

    /** A fraction, where it is short enough to be read. */
    public static String exact(Fraction ratio) {
        String text = ratio.toString();
        return text.length() > LONGEST_EXACT ? "–" : text;
    }

    private static List<String> ofAxle(WishAnswer.OfAxle wish) {
        if (wish.exact().value().isEmpty()) {
            return List.of("Which axle ratio would do it %s.".formatted(why(wish.exact())));
        }
        Fraction exact = wish.exact().value().get();
        List<String> says = new ArrayList<>();
        says.add("The axle ratio that would do it exactly is %s, where there is one of %s."
                .formatted(
                        Decimals.three(exact), Decimals.three(wish.now().value().orElseThrow())));
        wish.choices().value().stream()
                .flatMap(List::stream)
                .findFirst()
                .ifPresent(choice -> says.add(
                        "The nearest that the catalogue has is %s: %s. Whether it goes into the axle that there is, is told by its own page."
                                .formatted(Decimals.three(choice.choice().ratio()), rpm(choice))));
        says.add("Where two axles are driven, both must have it.");
        return says;
    }

    /** What an axle does to the engine's speed. */
    public static String rpm(AxleChoice choice) {
        Fraction percent = choice.choice().rpmForOld().minus(Fraction.ONE).times(HUNDRED);
        return percent.isZero()
                ? "the engine turns as is wished"
                : "the engine turns %s per cent %s than is wished"
                        .formatted(Decimals.rounded(percent.absolute(), 1), percent.signum() > 0 ? "faster" : "slower");
    }

    /** {@code SM-4050, Knot final drive 3.91, 11/43}. */
    public static String sets(AxleChoice choice) {
        return Names.joined(choice.sets().stream().map(PartSet::number).toList());
    }

    private static List<String> ofReading(WishAnswer.OfReading wish) {
        List<String> says = new ArrayList<>();
        says.add(SwapWording.speedometer(wish.change()));
        if (wish.exact().value().isEmpty()) {
            says.add("Which driven gear keeps the reading right %s.".formatted(why(wish.exact())));
            return says;
        }
        says.add("The driven speed gear has %d teeth; %s would keep the reading as it was."
                .formatted(
                        wish.drivenTeeth().value().orElseThrow(),
                        Decimals.plain(wish.exact().value().get(), 2)));
        wish.choices().value().stream()
                .flatMap(List::stream)
                .findFirst()
                .ifPresent(choice -> says.add("The nearest that the catalogue has is one of %d teeth: %s."
                        .formatted(choice.choice().teeth(), reads(choice))));
        return says;
    }

    /** What the speedometer then reads. */
    public static String reads(DrivenChoice choice) {
        Fraction percent = choice.choice().errorPercent();
        return percent.isZero()
                ? "the reading is right"
                : "it reads %s per cent too %s"
                        .formatted(Decimals.rounded(percent.absolute(), 1), percent.signum() > 0 ? "high" : "low");
    }

    private static String number(double bound) {
        return Decimals.plain(Fraction.of(BigDecimal.valueOf(bound)), 3);
    }

    private static String why(Telling<?> telling) {
        return telling.whyNot().orElseThrow();
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
