package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.web.asking.PartsAnswers;
import org.layshaft.web.asking.Question;

/** Answers questions about parts in a few sentences; the pages of the parts counter tell the rest. */
public final class PartsSayings implements PartsAnswers {
    private static final int MOST_NAMED = 6;

    private final PartsDesk parts;

    public PartsSayings(PartsDesk parts) {
        this.parts = parts;
    }

    @Override
    public List<String> says(Question.OfParts question) {
        try {
            if (question instanceof Question.Fits fits) {
                return fits(fits);
            } else if (question instanceof Question.FitsHere here) {
                return fitsHere(here);
            } else if (question instanceof Question.Supplied supplied) {
                return SupplyWording.says(parts.counter().supply(supplied.set(), SerialRange.ALL), parts.catalogue());
            }
            return question instanceof Question.OtherTyres tyres ? tyres(tyres) : wished(question);
        } catch (BadInputException e) {
            throw new UnanswerableException(e.getMessage());
        }
    }

    private List<String> wished(Question.OfParts question) {
        if (question instanceof Question.PutIn put) {
            return putIn(new SwapDesk(parts).swap(PartsRequests.of(put)));
        } else if (question instanceof Question.Measured measured) {
            return measured(BenchDesk.identify(PartsRequests.of(measured)));
        }
        WishAnswer answer = new WishDesk(parts).wish(PartsRequests.wish(question));
        return Stream.concat(Stream.of(answer.asked() + "."), WishWording.says(answer).stream())
                .toList();
    }

    private static List<String> putIn(SwapAnswer answer) {
        List<String> says = new ArrayList<>(List.of(SwapWording.asked(answer) + "."));
        SwapLines.of(answer.comparison()).stream()
                .filter(line -> line.what().equals(SwapLines.RATIO) && line.isChanged())
                .forEach(line -> says.add("%s: a ratio of %s, %s before."
                        .formatted(Names.gearName(line.gear()), line.after(), line.before())));
        says.addAll(SwapWording.says(answer));
        return says;
    }

    private static List<String> measured(BenchAnswer answer) {
        return answer.gear().stream()
                .flatMap(gear -> Stream.concat(
                        BenchWording.says(gear).stream(),
                        gear.value().stream()
                                .flatMap(told -> told.candidates().stream())
                                .limit(MOST_NAMED)
                                .map(BenchWording::of)))
                .toList();
    }

    private List<String> fits(Question.Fits asked) {
        FitAnswer answer = new FitDesk(parts)
                .fit(new FitRequest(Optional.of(asked.set()), asked.box(), Optional.empty(), asked.place()));
        List<String> says = new ArrayList<>(List.of(FitSaid.asked(answer) + ".", FitSaid.lead(answer)));
        answer.servings().stream().limit(1).forEach(best -> {
            says.addAll(answer.dependsOnTheBuild() ? List.of() : FitWording.besides(best));
            says.addAll(FitWording.notes(best));
        });
        answer.bestOfEachBox().stream()
                .flatMap(best -> best.companions().stream().limit(1))
                .flatMap(companions -> companions.cures().stream())
                .map(cure -> "Without what comes along: " + CheckWording.says(cure))
                .distinct()
                .forEach(says::add);
        answer.supplies().stream()
                .filter(supplied -> SupplyWording.hasSomethingToSay(supplied.supply()))
                .map(supplied -> "%s, for %s: %s."
                        .formatted(
                                supplied.supply().asked(),
                                supplied.box().map(FitWording::of).orElse("all boxes"),
                                SupplyWording.brief(supplied.supply())))
                .distinct()
                .forEach(says::add);
        return says;
    }

    private List<String> fitsHere(Question.FitsHere asked) {
        FitAnswer answer = new FitDesk(parts)
                .fit(new FitRequest(Optional.empty(), Optional.of(asked.box()), Optional.empty(), asked.place()));
        List<String> says = new ArrayList<>(List.of(FitSaid.asked(answer) + ".", FitSaid.lead(answer)));
        for (FitVerdict verdict : List.of(FitVerdict.FITS, FitVerdict.FITS_WITH)) {
            List<Serving> so = answer.servings().stream()
                    .filter(serving -> serving.verdict() == verdict)
                    .toList();
            so.stream()
                    .limit(MOST_NAMED)
                    .forEach(serving -> says.add("%s, %s: %s"
                            .formatted(
                                    FitWording.of(serving.placement().set()),
                                    serving.box().build().name(),
                                    FitWording.verdict(serving))));
            if (so.size() > MOST_NAMED) {
                says.add("%d more that %s are listed.".formatted(so.size() - MOST_NAMED, plural(verdict)));
            }
        }
        return says;
    }

    private static String plural(FitVerdict verdict) {
        return verdict == FitVerdict.FITS ? "fit as they are" : "fit with companions";
    }

    private List<String> tyres(Question.OtherTyres asked) {
        SwapAnswer answer = new SwapDesk(parts)
                .swap(SwapRequest.of(asked.layout()).onTyre(Optional.of(asked.before()), asked.after()));
        return List.of(SwapWording.speedometer(answer.comparison().speedometer()));
    }
}
