package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.Companions;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Fitted;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Missing;
import org.layshaft.engine.fit.Placement;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.PartSet;

/** Whether something serves, in words. */
public final class FitWording {
    private static final int MOST_NAMED = 3;

    private FitWording() {}

    /** {@code SM-4103, third pair}. */
    public static String of(PartSet set) {
        return set.name().isEmpty() || set.name().equals(set.number())
                ? set.number()
                : set.number() + ", " + set.name();
    }

    /** {@code early Curlew, serial numbers up to 1249}. */
    public static String of(BuiltBox box) {
        return box.build().name() + ", " + box.build().serials().words();
    }

    /** Where a set stands: {@code third gear and cluster third gear}. */
    public static String places(Placement placement, Fitted fitted) {
        return Names.joined(
                placement.parts().keySet().stream().map(fitted::nameOf).toList());
    }

    /** What must come along: {@code SM-2201, later mainshaft, and SM-3302, third needles}. */
    public static String of(Companions companions) {
        return Names.joined(companions.units().stream().map(FitWording::of).toList());
    }

    /** The verdict in one sentence, without the set and the box. */
    public static String verdict(Serving serving) {
        return switch (serving.verdict()) {
            case FITS -> "It fits as it is.";
            case FITS_WITH ->
                "It fits with companions: %s.".formatted(of(serving.companions().get(0)));
            case CANNOT_BE_TOLD -> "It cannot be told: %s.".formatted(missing(serving));
            case DOES_NOT_FIT -> "It does not fit: %s.".formatted(failing(serving));
        };
    }

    /** What there is to say besides, in sentences. */
    public static List<String> besides(Serving serving) {
        List<String> says = new ArrayList<>();
        long holding = serving.judgements().stream()
                .filter(judgement -> !judgement.fails() && !judgement.isUntold())
                .count();
        if (serving.verdict() == FitVerdict.FITS) {
            says.add(holding == 1 ? "The one check that looks here holds." : "All %d checks hold.".formatted(holding));
        }
        if (serving.judgements().isEmpty()) {
            says.add("No check looks at anything here.");
        }
        if (serving.verdict() == FitVerdict.DOES_NOT_FIT) {
            says.add(
                    serving.companions().isEmpty()
                            ? "No further parts of the catalogue cure it."
                            : "With %s nothing fails any more, and yet not everything can be told."
                                    .formatted(of(serving.companions().get(0))));
        }
        if (!serving.missing().isEmpty() && serving.verdict() != FitVerdict.CANNOT_BE_TOLD) {
            says.add("Without companions, what cannot be told: %s.".formatted(missing(serving)));
        }
        says.addAll(ExchangeWording.thrust(serving));
        return says;
    }

    private static String missing(Serving serving) {
        List<Missing> missing = serving.missing();
        if (isOfUntoldSpeedDrive(serving)) {
            return "whether the box has a speed drive, with which gears it was built and how far apart their axes stand, "
                    + "is not told in the catalogue. Look at the box, or at its number in the maker's data";
        }
        if (missing.isEmpty()) {
            return "no check looks at anything here";
        }
        List<String> named =
                missing.stream().limit(MOST_NAMED).map(Missing::words).toList();
        int more = missing.size() - named.size();
        return String.join("; ", named) + (more > 0 ? "; and %d more".formatted(more) : "");
    }

    private static boolean isOfUntoldSpeedDrive(Serving serving) {
        return serving.placement().parts().containsKey(Build.SPEED_DRIVING)
                && serving.missing().stream().anyMatch(missing -> missing.what() == Missing.What.PART);
    }

    private static String failing(Serving serving) {
        List<Judgement> failing = serving.failing().toList();
        String first = CheckWording.says(failing.get(0));
        int more = failing.size() - 1;
        String others = more == 0 ? "" : "; and %d more %s".formatted(more, more == 1 ? "check fails" : "checks fail");
        return first.substring(0, first.length() - 1) + others;
    }

    /** Where each companion goes: {@code third needles: SM-3302, third needles, later}. */
    public static List<String> placed(Companions companions, Fitted fitted) {
        List<String> placed = new ArrayList<>();
        for (Map.Entry<String, CataloguePart> entry : companions.parts().entrySet()) {
            CataloguePart part = entry.getValue();
            placed.add("%s: %s, %s".formatted(fitted.nameOf(entry.getKey()), part.number(), part.name()));
        }
        return placed;
    }

    /** What is written of the parts that a person should read. */
    public static List<String> notes(Serving serving) {
        List<String> notes = new ArrayList<>();
        note(notes, serving.placement().set());
        serving.placement().parts().values().forEach(part -> note(notes, part));
        serving.companions().stream().limit(1).forEach(companions -> {
            companions.units().forEach(unit -> note(notes, unit));
            companions.parts().values().forEach(part -> note(notes, part));
        });
        return notes.stream().distinct().toList();
    }

    private static void note(List<String> notes, PartSet set) {
        if (!set.note().isEmpty()) {
            notes.add("%s: %s".formatted(set.number(), set.note()));
        }
    }

    private static void note(List<String> notes, CataloguePart part) {
        if (!part.note().isEmpty()) {
            notes.add("%s: %s".formatted(part.number(), part.note()));
        }
    }
}
