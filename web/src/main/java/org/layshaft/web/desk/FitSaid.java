package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Serving;

/** What the parts counter says first. */
public final class FitSaid {
    /** What there is to know of what is told in brief. */
    public static final String OF_BRIEF =
            "Told in brief, what does not fit may have been tried with one further unit only;"
                    + " asked about by its box and place, it is tried with up to three.";

    private FitSaid() {}

    /** What was asked: {@code SM-4103, third pair, in early Curlew, serial numbers up to 1249}. */
    public static String asked(FitAnswer answer) {
        String what = answer.set().map(FitWording::of).orElse("What fits");
        String where = answer.everyBox() ? "in all boxes" : "in " + boxes(answer);
        String at = answer.place()
                .map(place -> " at the " + answer.boxes().get(0).fitted().nameOf(place))
                .orElse("");
        return "%s %s%s".formatted(what, where, at);
    }

    private static String boxes(FitAnswer answer) {
        List<BuiltBox> boxes = answer.boxes();
        return boxes.size() == 1
                ? FitWording.of(boxes.get(0))
                : "%s, %d builds".formatted(boxes.get(0).layout().name(), boxes.size());
    }

    /** The answer in a sentence or two. */
    public static String lead(FitAnswer answer) {
        Optional<Serving> best = answer.servings().stream().findFirst();
        if (best.isEmpty()) {
            return nowhere(answer);
        }
        if (answer.thorough() == 0) {
            return counted(answer);
        }
        return answer.servings().size() == 1 ? FitWording.verdict(best.get()) : bestOf(answer, best.get());
    }

    private static String nowhere(FitAnswer answer) {
        if (answer.boxes().isEmpty()) {
            return "It does not fit: the catalogue tells of no box at all.";
        }
        String at = answer.place().isPresent() ? "at this place" : "in it";
        return answer.set().isPresent()
                ? "It does not fit: there is nowhere %s that it could stand.".formatted(at)
                : "Nothing of the catalogue could stand %s.".formatted(at);
    }

    private static String bestOf(FitAnswer answer, Serving best) {
        if (answer.dependsOnTheBuild()) {
            return "It depends on the build. "
                    + answer.bestOfEachBox().stream()
                            .map(each -> "%s, %s: %s"
                                    .formatted(FitWording.of(each.box()), places(each), FitWording.verdict(each)))
                            .collect(Collectors.joining(" "));
        }
        return "Best of %d places: %s, %s. %s"
                .formatted(answer.servings().size(), best.box().build().name(), places(best), FitWording.verdict(best));
    }

    private static String places(Serving serving) {
        return FitWording.places(serving.placement(), serving.box().fitted());
    }

    /** {@code 12 ways to stand: fits as it is at 2, does not fit at 10.} */
    private static String counted(FitAnswer answer) {
        String counts = List.of(FitVerdict.values()).stream()
                .map(verdict -> counted(verdict, answer))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return "%s %s: %s."
                .formatted(
                        answer.servings().size(),
                        answer.servings().size() == 1 ? "way to stand" : "ways to stand",
                        counts);
    }

    private static Optional<String> counted(FitVerdict verdict, FitAnswer answer) {
        long count = answer.servings().stream()
                .filter(serving -> serving.verdict() == verdict)
                .count();
        return count == 0 ? Optional.empty() : Optional.of("%s at %d".formatted(verdict.spoken(), count));
    }
}
