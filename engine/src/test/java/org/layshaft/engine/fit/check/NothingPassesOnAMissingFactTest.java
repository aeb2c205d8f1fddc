package org.layshaft.engine.fit.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.fit.FitCheck;
import org.layshaft.engine.fit.FitChecks;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.Meeting;
import org.layshaft.engine.fit.MeetingKind;
import org.layshaft.engine.fit.Outcome;
import org.layshaft.engine.fit.check.FittingBox.Spot;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;

/**
 * In boxes in which everything fits, any fact is taken away: now, before, or both. A check that looked at it says that it
 * cannot be told and names it; a check that did not says exactly what it said before, figure for figure.
 */
class NothingPassesOnAMissingFactTest {
    /** What may be stated in either of two ways is missed in the usual one. */
    private static final Map<FactName, FactName> USUALLY = Map.of(
            FactName.DIAMETRAL_PITCH, FactName.MODULE_MM,
            FactName.NEEDLES_INSIDE_MM, FactName.BORE_MM,
            FactName.NEEDLES_OUTSIDE_MM, FactName.OUTSIDE_MM,
            FactName.NEEDLES_WIDTH_MM, FactName.WIDTH_MM,
            FactName.SPAN_MM, FactName.PROFILE_SHIFT);

    /** Where nothing is told of its thickness, a ring gear's own ratio decides: the format says so. */
    private static final FactName WITH_A_DEFAULT = FactName.MADE_FOR_RATIO;

    /** All that look at facts; one looks at sets. */
    static Stream<FitCheck> checks() {
        return FitChecks.found().all().stream().filter(check -> check.meeting() != MeetingKind.TOGETHER);
    }

    @ParameterizedTest
    @MethodSource("checks")
    void holdsWhereEverythingFits(FitCheck check) {
        List<Outcome> outcomes = FittingBoxes.all().stream()
                .flatMap(box -> box.judged(check).stream())
                .peek(judgement -> assertEquals(Outcome.HOLDS, judgement.outcome(), judgement::toString))
                .map(Judgement::outcome)
                .toList();
        assertFalse(outcomes.isEmpty(), "no box has anything for " + check.id());
    }

    @ParameterizedTest
    @MethodSource("checks")
    void namesAnyFactThatIsTakenAwayOrDidNotLookAtIt(FitCheck check) {
        Set<FactName> asked = EnumSet.noneOf(FactName.class);
        for (FittingBox box : FittingBoxes.all()) {
            Map<Meeting, Judgement> fitting = byMeeting(box.judged(check));
            for (Map.Entry<Spot, Collection<Fact>> spot : box.facts().entrySet()) {
                for (Fact fact : spot.getValue()) {
                    if (fact.name() != WITH_A_DEFAULT && isAsked(check, box, fitting, spot.getKey(), fact)) {
                        asked.add(fact.name());
                    }
                }
            }
        }
        assertFalse(asked.isEmpty(), check.id() + " asks for nothing");
    }

    private static boolean isAsked(
            FitCheck check, FittingBox box, Map<Meeting, Judgement> fitting, Spot spot, Fact fact) {
        return Stream.of(box.without(spot, fact.name()), box.hadNot(spot, fact.name()), box.neverHad(spot, fact.name()))
                .map(spoilt -> compare(fitting, byMeeting(spoilt.judged(check)), spot, fact))
                .reduce(false, Boolean::logicalOr);
    }

    /** Whether the check asked for the fact. */
    private static boolean compare(
            Map<Meeting, Judgement> fitting, Map<Meeting, Judgement> spoilt, Spot spot, Fact fact) {
        boolean asked = false;
        for (Map.Entry<Meeting, Judgement> entry : fitting.entrySet()) {
            Judgement now = spoilt.get(entry.getKey());
            if (!entry.getValue().equals(now)) {
                assertTrue(now != null, () -> "silent without %s at %s".formatted(fact.name(), spot));
                assertEquals(
                        Outcome.UNTOLD, now.outcome(), () -> "without %s at %s: %s".formatted(fact.name(), spot, now));
                assertTrue(
                        now.missing().stream()
                                .anyMatch(missing ->
                                        missing.name() == fact.name() || missing.name() == USUALLY.get(fact.name())),
                        () -> "without %s at %s: %s".formatted(fact.name(), spot, now));
                asked = true;
            }
        }
        return asked;
    }

    private static Map<Meeting, Judgement> byMeeting(List<Judgement> judgements) {
        Map<Meeting, Judgement> byMeeting = new HashMap<>();
        judgements.forEach(judgement -> byMeeting.put(judgement.meeting(), judgement));
        return byMeeting;
    }

    /** What is known of a part and serves other ends than fit. */
    @Test
    void everyFactIsAskedForBySomeCheckButThoseThatOnlyTellWhatAPartIs() {
        Set<FactName> asked = EnumSet.noneOf(FactName.class);
        FittingBoxes.all()
                .forEach(box -> box.facts()
                        .forEach((spot, facts) -> facts.stream()
                                .filter(fact -> !asked.contains(fact.name()))
                                .filter(fact -> checks().anyMatch(
                                                check -> box.neverHad(spot, fact.name()).judged(check).stream()
                                                        .anyMatch(Judgement::isUntold)))
                                .forEach(fact -> asked.add(fact.name()))));
        assertEquals(
                EnumSet.of(FactName.SERIES, FactName.THICKNESS_MM, WITH_A_DEFAULT),
                EnumSet.complementOf(EnumSet.copyOf(asked)));
    }
}
