package org.layshaft.web.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.Proposal;
import org.layshaft.engine.swap.SetOffer;
import org.layshaft.engine.swap.Target;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.FitWording;
import org.layshaft.web.desk.WishAnswer;
import org.layshaft.web.desk.WishAnswer.AxleChoice;
import org.layshaft.web.desk.WishAnswer.DrivenChoice;
import org.layshaft.web.desk.WishWording;

/**
 * What meets a wish.
 *
 * @param build whose parts are known; null where none is
 * @param asked in words
 * @param gear what other teeth do; null where the wish is not of a gear
 * @param axle what another axle does; null where the wish is not of one
 * @param reading what another driven speed gear does; null where the wish is not of one
 */
public record WishJson(
        String layout,
        String build,
        String asked,
        List<String> says,
        GearJson gear,
        AxleJson axle,
        ReadingJson reading,
        List<String> cautions) {
    private static final int DECIMALS = 6;

    /**
     * A wish of one gear.
     *
     * @param now its ratio
     * @param wished null where it cannot be told
     * @param pair ids of the two gears that get other teeth; empty where it cannot be told
     * @param teeth that meet it, best first
     * @param lookedAt in how many ways the catalogue gives other teeth
     * @param sets that meet it: those that fit first
     * @param untold why something cannot be told
     */
    public record GearJson(
            String gear,
            NumberJson now,
            WishedJson wished,
            List<String> pair,
            List<TeethJson> teeth,
            int lookedAt,
            List<WishedSetJson> sets,
            List<String> untold) {
        static GearJson of(WishAnswer.OfGear wish) {
            return new GearJson(
                    wish.gear(),
                    NumberJson.of(wish.now()),
                    wish.target().value().map(WishedJson::of).orElse(null),
                    wish.pair()
                            .value()
                            .map(pair -> List.of(pair.first(), pair.second()))
                            .orElse(List.of()),
                    wish.proposals().value().stream()
                            .flatMap(List::stream)
                            .map(TeethJson::of)
                            .toList(),
                    wish.sets().value().map(sets -> sets.lookedAt()).orElse(0),
                    wish.sets().value().stream()
                            .flatMap(sets -> sets.offers().stream())
                            .map(WishedSetJson::of)
                            .toList(),
                    List.of(wish.target(), wish.proposals(), wish.sets()).stream()
                            .map(Telling::because)
                            .flatMap(List::stream)
                            .distinct()
                            .toList());
        }
    }

    /** @param open whether the two bounds themselves do not meet it */
    public record WishedJson(NumberJson least, NumberJson most, NumberJson best, boolean open) {
        static WishedJson of(Target target) {
            return new WishedJson(
                    NumberJson.of(target.least()),
                    NumberJson.of(target.most()),
                    NumberJson.of(target.ideal()),
                    target.open());
        }
    }

    /**
     * Teeth that meet it.
     *
     * @param shiftSum what the profile shifts must come to
     * @param distance from the best ratio, as a part of it
     */
    public record TeethJson(
            int first,
            int second,
            BigDecimal moduleMm,
            BigDecimal helixDeg,
            BigDecimal centreMm,
            BigDecimal shiftSum,
            NumberJson ratio,
            NumberJson distance) {
        static TeethJson of(Proposal proposal) {
            return new TeethJson(
                    proposal.firstTeeth(),
                    proposal.secondTeeth(),
                    rounded(proposal.moduleMm()),
                    rounded(proposal.helixDeg()),
                    rounded(proposal.centreMm()),
                    rounded(proposal.shiftSum()),
                    NumberJson.of(proposal.ratio()),
                    NumberJson.of(proposal.distance()));
        }
    }

    /** A set, where it would stand. */
    public record WishedSetJson(
            String set,
            String name,
            List<String> places,
            NumberJson ratio,
            NumberJson distance,
            String verdict,
            String says) {
        static WishedSetJson of(SetOffer offer) {
            Serving serving = offer.serving();
            return new WishedSetJson(
                    serving.placement().set().number(),
                    serving.placement().set().name(),
                    List.copyOf(serving.placement().parts().keySet()),
                    NumberJson.of(offer.ratio()),
                    NumberJson.of(offer.distance()),
                    serving.verdict().word(),
                    FitWording.verdict(serving));
        }
    }

    /**
     * A wish of the axle.
     *
     * @param now null where it is not stated
     * @param exact null where it cannot be told
     * @param choices that the catalogue has, the nearest first
     */
    public record AxleJson(
            String gear, NumberJson now, NumberJson exact, List<AxleChoiceJson> choices, List<String> untold) {
        static AxleJson of(WishAnswer.OfAxle wish) {
            return new AxleJson(
                    wish.gear(),
                    wish.now().value().map(NumberJson::of).orElse(null),
                    wish.exact().value().map(NumberJson::of).orElse(null),
                    wish.choices().value().stream()
                            .flatMap(List::stream)
                            .map(AxleChoiceJson::of)
                            .toList(),
                    wish.exact().because().stream().distinct().toList());
        }
    }

    /** @param rpmForWished engine speed for each that was wished for */
    public record AxleChoiceJson(NumberJson ratio, NumberJson rpmForWished, List<String> sets) {
        static AxleChoiceJson of(AxleChoice choice) {
            return new AxleChoiceJson(
                    NumberJson.of(choice.choice().ratio()),
                    NumberJson.of(choice.choice().rpmForOld()),
                    choice.sets().stream().map(PartSet::number).toList());
        }
    }

    /**
     * A wish of the speed reading.
     *
     * @param driven teeth of the driven gear that there is; null where they are not known
     * @param exact teeth that would keep the reading right; null where that cannot be told
     */
    public record ReadingJson(Integer driven, NumberJson exact, List<DrivenJson> choices, List<String> untold) {
        static ReadingJson of(WishAnswer.OfReading wish) {
            return new ReadingJson(
                    wish.drivenTeeth().value().orElse(null),
                    wish.exact().value().map(NumberJson::of).orElse(null),
                    wish.choices().value().stream()
                            .flatMap(List::stream)
                            .map(DrivenJson::of)
                            .toList(),
                    wish.exact().because().stream().distinct().toList());
        }
    }

    /** @param errorPercent how much too high the speedometer then reads */
    public record DrivenJson(int teeth, NumberJson errorPercent, String set, String verdict, String says) {
        static DrivenJson of(DrivenChoice choice) {
            return new DrivenJson(
                    choice.choice().teeth(),
                    NumberJson.of(choice.choice().errorPercent()),
                    choice.serving().placement().set().number(),
                    choice.serving().verdict().word(),
                    FitWording.verdict(choice.serving()));
        }
    }

    public static WishJson of(WishAnswer answer) {
        return new WishJson(
                answer.layout().id(),
                answer.built().map(box -> box.build().id()).orElse(null),
                answer.asked(),
                WishWording.says(answer),
                answer.gear().map(GearJson::of).orElse(null),
                answer.axle().map(AxleJson::of).orElse(null),
                answer.reading().map(ReadingJson::of).orElse(null),
                Cautions.ofParts());
    }

    private static BigDecimal rounded(double number) {
        return BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
