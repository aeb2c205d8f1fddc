package org.layshaft.engine.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName;
import org.layshaft.kb.catalogue.FactName.Unit;

/**
 * One meeting, looked at by one check after another. It hands each the facts of both sides and keeps what was missing to
 * it; while anything is, every judgement is that it cannot be told.
 */
public final class Judging {
    /** Stated numbers that must be the same may differ by what rounding leaves, in their unit. */
    public static final double ROUNDING = 1e-6;

    private static final Supplier<String> UNNAMED = () -> "";

    private static final Optional<Judgement> HOLDS = alone(Outcome.HOLDS);
    private static final Optional<Judgement> FAILS = alone(Outcome.FAILS);
    private static final Optional<Judgement> UNTOLD = alone(Outcome.UNTOLD);

    private final Meeting meeting;
    private final Fitted before;
    private final Fitted now;
    private final boolean brief;
    private final Held one;
    private final Held other;
    private Held seat;
    private FitCheck check;
    private boolean untold;
    private final List<Missing> missing = new ArrayList<>(0);

    /**
     * @param before the box as it was
     * @param now the box with the parts in question in it
     * @param brief whether only the outcome counts, so that no words need be made
     */
    Judging(Meeting meeting, Fitted before, Fitted now, boolean brief) {
        this.meeting = meeting;
        this.before = before;
        this.now = now;
        this.brief = brief;
        this.one = at(meeting.one());
        this.other = at(meeting.other());
    }

    /** What this check says; empty where it has nothing to say. */
    Optional<Judgement> by(FitCheck next) {
        check = next;
        untold = false;
        missing.clear();
        return next.judge(this);
    }

    public Meeting meeting() {
        return meeting;
    }

    /** The box as it was. */
    public Fitted before() {
        return before;
    }

    /** The box with the parts in question in it. */
    public Fitted now() {
        return now;
    }

    public Held one() {
        return one;
    }

    public Held other() {
        return other;
    }

    /** The spot on the part of the second place where that of the first sits. */
    public Held seat() {
        if (seat == null) {
            seat = on(meeting.other(), meeting.one());
        }
        return seat;
    }

    /** The part at a place, or the feature of its carrier that the place is. */
    public Held at(String place) {
        CataloguePart part = now.partAt(place);
        return new Held(this, part, now.at(place), brief ? UNNAMED : () -> named(place, part));
    }

    /** The spot on the part at a place where something sits, as the journal of a bearing. */
    public Held on(String place, String feature) {
        CataloguePart part = now.ownPartAt(place);
        return new Held(
                this,
                part,
                now.on(place, feature),
                brief ? UNNAMED : () -> "%s for the %s".formatted(named(place, part), now.nameOf(feature)));
    }

    /** The part that stood at a place, or the feature of its carrier that the place was. */
    public Held was(String place) {
        CataloguePart part = before.partAt(place);
        return new Held(this, part, before.at(place), brief ? UNNAMED : () -> named(place, part) + " that was there");
    }

    /** The spot where something sat on the part that stood at a place. */
    public Held wasOn(String place, String feature) {
        CataloguePart part = before.ownPartAt(place);
        return new Held(
                this,
                part,
                before.on(place, feature),
                brief
                        ? UNNAMED
                        : () -> "%s that was there, for the %s".formatted(named(place, part), before.nameOf(feature)));
    }

    /** The two lines of shafts in the case. */
    public Held centre(String shaft, String otherShaft) {
        CataloguePart part = now.ownPartAt(Fitted.CASE);
        return new Held(
                this,
                part,
                now.centre(shaft, otherShaft),
                brief
                        ? UNNAMED
                        : () -> "the %s and the %s in %s"
                                .formatted(now.nameOf(shaft), now.nameOf(otherShaft), named(Fitted.CASE, part)));
    }

    private String named(String place, CataloguePart part) {
        return "the %s%s".formatted(now.nameOf(place), part == null ? "" : " " + part.number());
    }

    void missing(Held held, FactName fact) {
        untold = true;
        if (!brief) {
            missing.add(held.part() == null ? Missing.part(held.name()) : Missing.fact(held.name(), fact));
        }
    }

    /** Whether something that was asked for was not there. */
    public boolean isUntold() {
        return untold;
    }

    /** The same fact of both sides must be the same. */
    public Optional<Judgement> same(FactName fact) {
        return same(one(), fact, other(), fact);
    }

    /** A fact of one side must be the same as one of the other. */
    public Optional<Judgement> same(Held first, FactName fact, Held second, FactName otherFact) {
        Fact a = first.fact(fact);
        Fact b = second.fact(otherFact);
        if (isUntold()) {
            return untold();
        }
        boolean words = Double.isNaN(a.number());
        double off = words ? 0 : a.number() - b.number();
        boolean holds = words ? a.text().equals(b.text()) : Math.abs(off) <= ROUNDING;
        if (brief) {
            return alone(holds);
        }
        return Optional.of(judgement(
                holds,
                List.of(Figure.of(first.name(), a), Figure.of(second.name(), b)),
                Limit.SAME,
                holds || words ? Optional.empty() : Optional.of(byHowMuch(Math.abs(off), a.name()))));
    }

    private static Figure byHowMuch(double off, FactName fact) {
        return Figure.of("the difference", off, fact.unit().orElse(Unit.RATIO));
    }

    /** A reckoned figure must be at least this. */
    public Optional<Judgement> atLeast(Figure figure, double least, String source) {
        return between(figure, least, Double.POSITIVE_INFINITY, source);
    }

    /** A reckoned figure must be at most this. */
    public Optional<Judgement> atMost(Figure figure, double most, String source) {
        return between(figure, Double.NEGATIVE_INFINITY, most, source);
    }

    /** A reckoned figure must be from least to most, both within. */
    public Optional<Judgement> between(Figure figure, double least, double most, String source) {
        return between(List.of(figure), figure, least, most, source);
    }

    /**
     * The same, showing what the figure was reckoned from beside it.
     *
     * @param shown all figures to show, the one that is judged among them
     */
    public Optional<Judgement> between(List<Figure> shown, Figure figure, double least, double most, String source) {
        if (isUntold()) {
            return untold();
        }
        double off = Math.max(least - figure.number(), figure.number() - most);
        boolean holds = off <= ROUNDING;
        if (brief) {
            return alone(holds);
        }
        return Optional.of(judgement(
                holds,
                shown,
                new Limit(bounds(least, most, figure.unit()), source),
                holds ? Optional.empty() : Optional.of(Figure.of("the limit", off, figure.unit()))));
    }

    private static String bounds(double least, double most, Unit unit) {
        if (Double.isInfinite(most)) {
            return "must be at least %s%s".formatted(Figure.decimal(least), unit.suffix());
        }
        return Double.isInfinite(least)
                ? "must be at most %s%s".formatted(Figure.decimal(most), unit.suffix())
                : "must be from %s to %s%s".formatted(Figure.decimal(least), Figure.decimal(most), unit.suffix());
    }

    /** Something that is or is not so, with the figures that show it. */
    public Optional<Judgement> holds(boolean holds, List<Figure> figures, Limit limit) {
        if (isUntold()) {
            return untold();
        }
        return brief ? alone(holds) : Optional.of(judgement(holds, figures, limit, Optional.empty()));
    }

    /** That it cannot be told, with all that was asked for and not there. */
    public Optional<Judgement> untold() {
        return brief
                ? UNTOLD
                : Optional.of(new Judgement(
                        check,
                        meeting,
                        Outcome.UNTOLD,
                        List.of(),
                        Limit.SAME,
                        missing.stream().distinct().toList(),
                        Optional.empty(),
                        ""));
    }

    private Judgement judgement(boolean holds, List<Figure> figures, Limit limit, Optional<Figure> missedBy) {
        return new Judgement(
                check, meeting, holds ? Outcome.HOLDS : Outcome.FAILS, figures, limit, List.of(), missedBy, "");
    }

    private static Optional<Judgement> alone(boolean holds) {
        return holds ? HOLDS : FAILS;
    }

    /** Nobody asks such a judgement for more than its outcome. */
    private static Optional<Judgement> alone(Outcome outcome) {
        return Optional.of(new Judgement(null, null, outcome, List.of(), Limit.SAME, List.of(), Optional.empty(), ""));
    }
}
