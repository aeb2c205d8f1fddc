package org.layshaft.web.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.swap.SetOffer;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.FitWording;
import org.layshaft.web.desk.SwapRequest;
import org.layshaft.web.desk.Units;
import org.layshaft.web.desk.WishAnswer;
import org.layshaft.web.desk.WishDesk;
import org.layshaft.web.desk.WishKind;
import org.layshaft.web.desk.WishLines;
import org.layshaft.web.desk.WishRequest;
import org.layshaft.web.desk.WishWording;
import org.layshaft.web.page.FitFormView.ChoiceView;
import org.layshaft.web.page.WishView.DrivenView;
import org.layshaft.web.page.WishView.WishFormView;
import org.layshaft.web.page.WishView.WishedAxleView;
import org.layshaft.web.page.WishView.WishedSetView;

/** The page of what meets a wish. Thread-safe. */
public final class WishPage {
    private static final int MOST_CHOICES = 8;

    private final BoxChoices boxes;
    private final WishDesk wishes;
    private final Templates templates;

    WishPage(Desk desk, Templates templates) {
        this.boxes = new BoxChoices(desk);
        this.wishes = new WishDesk(desk.parts());
        this.templates = templates;
    }

    /** The page; what cannot be used is said on it, above the form to put it right in. */
    public Answered answer(WishRequest request, Units units) {
        if (request.isEmpty()) {
            return Answered.with(fill(request, units, List.of(), Optional.empty()));
        }
        try {
            return Answered.with(fill(request, units, List.of(), Optional.of(wishes.wish(request))));
        } catch (BadInputException problem) {
            List<String> trouble = problem.getMessage().lines().toList();
            return new Answered(Optional.of(problem), fill(request, units, trouble, Optional.empty()));
        }
    }

    private String fill(WishRequest request, Units units, List<String> trouble, Optional<WishAnswer> answer) {
        Optional<WishAnswer.OfGear> gear = answer.flatMap(WishAnswer::gear);
        int offered =
                gear.flatMap(wish -> wish.proposals().value()).map(List::size).orElse(0);
        return templates.fill(
                "wish",
                new WishView(
                        boxes.all(request.box()),
                        kinds(request.kind()),
                        form(request, !isOf(request, WishKind.AXLE) && !isOf(request, WishKind.READING)),
                        form(request, isOf(request, WishKind.AXLE)),
                        form(request, isOf(request, WishKind.READING)),
                        trouble,
                        answer.map(WishAnswer::asked).orElse(null),
                        answer.map(WishWording::says).orElse(List.of()),
                        gear.map(wish -> WishLines.of(answer.get().layout(), wish, WishLines.MOST, units))
                                .orElse(List.of()),
                        Math.max(0, offered - WishLines.MOST),
                        gear.filter(wish -> wish.proposals().value().isPresent())
                                .map(wish -> WishWording.rules(wish.rules()))
                                .orElse(null),
                        gear.map(wish -> sets(wish, request)).orElse(List.of()),
                        gear.map(wish -> others(wish, request)).orElse(List.of()),
                        answer.flatMap(WishAnswer::axle)
                                .map(axle -> axles(axle, request))
                                .orElse(List.of()),
                        answer.flatMap(WishAnswer::reading)
                                .map(WishPage::driven)
                                .orElse(List.of()),
                        Cautions.ofParts(),
                        "/api/wish" + WishAddress.query(request)),
                units,
                WishAddress.link(request));
    }

    private static List<ChoiceView> kinds(Optional<String> chosen) {
        return Stream.of(WishKind.values())
                .filter(WishKind::isOfGear)
                .map(kind -> new ChoiceView(
                        kind.word(),
                        kind.spoken(),
                        chosen.filter(kind.word()::equalsIgnoreCase).isPresent()))
                .toList();
    }

    private static boolean isOf(WishRequest request, WishKind kind) {
        return request.kind().filter(kind.word()::equalsIgnoreCase).isPresent();
    }

    /** What was typed, where this is the form that it was typed into. */
    private static WishFormView form(WishRequest request, boolean sent) {
        return new WishFormView(
                typed(request.serial(), sent),
                typed(request.gear(), sent),
                typed(request.value(), sent),
                typed(request.other(), sent),
                typed(request.at(), sent),
                typed(request.within(), sent),
                typed(request.centre(), sent),
                typed(request.axle(), sent),
                typed(request.tyre(), sent),
                typed(request.wasTyre(), sent),
                sent);
    }

    private static String typed(Optional<String> text, boolean sent) {
        return text.filter(any -> sent).orElse("");
    }

    private static List<WishedSetView> sets(WishAnswer.OfGear wish, WishRequest request) {
        return wish.sets().value().stream()
                .flatMap(sets -> sets.serving().stream())
                .map(offer -> set(wish, offer, request))
                .toList();
    }

    private static List<WishedSetView> others(WishAnswer.OfGear wish, WishRequest request) {
        return wish.sets().value().stream()
                .flatMap(sets -> sets.others().stream())
                .limit(WishWording.MOST_OTHERS)
                .map(offer -> set(wish, offer, request))
                .toList();
    }

    private static WishedSetView set(WishAnswer.OfGear wish, SetOffer offer, WishRequest request) {
        String build = offer.serving().box().build().id();
        String place = offer.serving().placement().parts().keySet().iterator().next();
        SwapRequest swap = SwapRequest.of(build)
                .putting(offer.serving().placement().set().number())
                .at(place)
                .cruising(request.at());
        return new WishedSetView(
                ServingView.brief(offer.serving()),
                Decimals.three(offer.ratio()),
                WishWording.exact(offer.ratio()),
                WishWording.misses(wish, offer.ratio()),
                SwapAddress.link(swap));
    }

    private static List<WishedAxleView> axles(WishAnswer.OfAxle axle, WishRequest request) {
        return axle.choices().value().stream()
                .flatMap(List::stream)
                .limit(MOST_CHOICES)
                .map(choice -> {
                    String ratio = Decimals.three(choice.choice().ratio());
                    SwapRequest swap = SwapRequest.of(request.box().orElseThrow())
                            .onAxle(ratio)
                            .cruising(request.at());
                    return new WishedAxleView(
                            ratio,
                            WishWording.exact(choice.choice().ratio()),
                            WishWording.rpm(choice),
                            choice.sets().stream().map(WishPage::link).toList(),
                            SwapAddress.link(swap));
                })
                .toList();
    }

    private static LinkView link(PartSet set) {
        return new LinkView(FitWording.of(set), FitAddress.link(FitRequest.of(set.number())), false);
    }

    private static List<DrivenView> driven(WishAnswer.OfReading reading) {
        return reading.choices().value().stream()
                .flatMap(List::stream)
                .map(choice -> new DrivenView(
                        choice.choice().teeth(), WishWording.reads(choice), ServingView.brief(choice.serving())))
                .toList();
    }
}
