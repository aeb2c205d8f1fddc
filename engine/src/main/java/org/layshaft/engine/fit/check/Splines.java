package org.layshaft.engine.fit.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.layshaft.engine.fit.Figure;
import org.layshaft.engine.fit.Held;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Judging;
import org.layshaft.engine.fit.Limit;
import org.layshaft.engine.spline.Member;
import org.layshaft.engine.spline.Spline;
import org.layshaft.engine.spline.SplineComparison;
import org.layshaft.engine.spline.SplineComparison.Outcome;
import org.layshaft.engine.spline.SplineDesignation;
import org.layshaft.engine.spline.SplineEntry;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/** A splined shaft and what it is pushed into. */
record Splines(Held shaft, Held hub) {
    private static final List<String> STANDARDS = List.of("DIN 5480", "ISO 4156", "ANSI B92.1");
    private static final Limit ENTERS =
            new Limit("must be splines of which the one enters the other", "DIN 5480, ISO 4156 and ANSI B92.1");

    /** Whether the shaft enters, whatever the designations leave open. Tolerances bar it only where they are told. */
    Optional<Judgement> enter(Judging judging) {
        String ofShaft = shaft.word(FactName.SPLINE);
        String ofHub = hub.word(FactName.SPLINE);
        if (judging.isUntold()) {
            return judging.untold();
        }
        List<Figure> shown = List.of(Figure.of(shaft.name(), ofShaft), Figure.of(hub.name(), ofHub));
        if (ofShaft.equals(ofHub)) {
            return judging.holds(true, shown, ENTERS);
        }
        if (standards(ofShaft, ofHub) > 1) {
            return judging.holds(false, shown, ENTERS).map(told -> told.remarking("The two must have one standard."));
        }
        List<Spline> entering = read(shaft, ofShaft, Member.SHAFT);
        List<Spline> entered = read(hub, ofHub, Member.HUB);
        if (judging.isUntold()) {
            return judging.untold();
        }
        List<List<SplineComparison>> bars = entering.stream()
                .flatMap(one ->
                        entered.stream().map(other -> SplineEntry.of(one, other).with(Outcome.BARS)))
                .toList();
        if (bars.stream().allMatch(List::isEmpty)) {
            return judging.holds(true, shown, ENTERS);
        }
        if (bars.stream().noneMatch(List::isEmpty)) {
            List<SplineComparison> always = bars.get(0).stream()
                    .filter(bar -> bars.stream().allMatch(each -> each.contains(bar)))
                    .toList();
            return judging.holds(false, shown, ENTERS).map(told -> told.remarking(words(always)));
        }
        unread(shaft, entering);
        unread(hub, entered);
        return judging.untold();
    }

    /** It depends on what the designation leaves open. */
    private static void unread(Held held, List<Spline> possible) {
        if (possible.size() > 1) {
            held.unread(FactName.SPLINE);
        }
    }

    /** Of one length of spline in the other, at least as much as before. */
    Optional<Judgement> engage(Judging judging, Splines before) {
        double ofShaftMm = shaft.number(FactName.SPLINE_LENGTH_MM);
        double ofHubMm = hub.number(FactName.SPLINE_LENGTH_MM);
        double wasMm =
                Math.min(before.shaft.number(FactName.SPLINE_LENGTH_MM), before.hub.number(FactName.SPLINE_LENGTH_MM));
        Figure engaged = Figure.of("what engages", Math.min(ofShaftMm, ofHubMm), Unit.MM);
        return judging.between(
                List.of(Figure.of(shaft.name(), ofShaftMm, Unit.MM), Figure.of(hub.name(), ofHubMm, Unit.MM), engaged),
                engaged,
                wasMm,
                Double.POSITIVE_INFINITY,
                "what the box was built with");
    }

    /** How many standards the two name between them; designations that tell no more than that can be told apart. */
    private static long standards(String ofShaft, String ofHub) {
        return STANDARDS.stream()
                .filter(standard -> ofShaft.contains(standard) || ofHub.contains(standard))
                .count();
    }

    /** What it may mean. One that cannot be read is as good as missing. */
    private static List<Spline> read(Held held, String designation, Member member) {
        try {
            return SplineDesignation.possible(designation, member);
        } catch (ImpossibleFactsException unread) {
            held.unread(FactName.SPLINE);
            return List.of();
        }
    }

    private static String words(List<SplineComparison> bars) {
        return bars.stream()
                .map(bar -> "%s: %s in %s. %s".formatted(capital(bar.what()), bar.ofShaft(), bar.ofHub(), bar.why()))
                .collect(Collectors.joining(" "));
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
