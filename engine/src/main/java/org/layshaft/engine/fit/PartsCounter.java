package org.layshaft.engine.fit;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/** Answers whether parts serve. Immutable and thread-safe. */
public final class PartsCounter {
    private final Catalogue catalogue;
    private final FitChecks checks;
    private final Judges judges;
    private final Map<String, Shelf> shelves = new HashMap<>();
    private final Map<String, BuiltBox> boxes = new LinkedHashMap<>();

    private PartsCounter(Map<String, Layout> layouts, Catalogue catalogue, FitChecks checks) {
        this.catalogue = catalogue;
        this.checks = checks;
        this.judges = new Judges(checks);
        SoldTogether together = SoldTogether.in(catalogue);
        Map<String, Places> places = new HashMap<>();
        for (Build build : catalogue.builds().values()) {
            Layout layout = layouts.get(build.layout());
            if (layout != null) {
                shelves.computeIfAbsent(layout.id(), first -> new Shelf(new Placements(layout), catalogue, together));
                Places of = places.computeIfAbsent(layout.id(), first -> Places.of(layout));
                boxes.put(build.id(), new BuiltBox(build, Fitted.of(of, build, catalogue, together)));
            }
        }
    }

    public static PartsCounter of(KnowledgeBase knowledge) {
        return of(knowledge.layouts(), knowledge.catalogue(), FitChecks.found());
    }

    static PartsCounter of(Map<String, Layout> layouts, Catalogue catalogue, FitChecks checks) {
        return new PartsCounter(layouts, catalogue, checks);
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    public FitChecks checks() {
        return checks;
    }

    /** The boxes by id of their build. */
    public Map<String, BuiltBox> boxes() {
        return Collections.unmodifiableMap(boxes);
    }

    /** Every way that a set can stand in a box. */
    public List<Placement> placements(PartSet set, BuiltBox box) {
        return shelves.get(box.layout().id()).of(set);
    }

    /** Whether the set serves there, as it is or with companions. */
    public Serving serve(Placement placement, BuiltBox box) {
        return serve(placement, box, CompanionSearch.MOST_UNITS);
    }

    /**
     * The same, sooner.
     *
     * @param mostCompanions how many further units are tried; each more takes far longer than the one before
     */
    public Serving serve(Placement placement, BuiltBox box, int mostCompanions) {
        Fitted now = box.fitted().with(placement.parts());
        List<Judgement> judgements = judges.judge(box.fitted(), now);
        Set<String> unlookedAt = Judges.unlookedAt(now, judgements);
        List<Companions> companions =
                judgements.stream().anyMatch(Judgement::fails) ? companions(placement, box, mostCompanions) : List.of();
        return new Serving(
                box, placement, verdict(judgements, unlookedAt, companions), companions, judgements, unlookedAt);
    }

    private static FitVerdict verdict(List<Judgement> judgements, Set<String> unlookedAt, List<Companions> companions) {
        if (judgements.stream().anyMatch(Judgement::fails)) {
            return companions.stream().anyMatch(Companions::told) ? FitVerdict.FITS_WITH : FitVerdict.DOES_NOT_FIT;
        }
        boolean untold = !unlookedAt.isEmpty() || judgements.stream().anyMatch(Judgement::isUntold);
        return untold ? FitVerdict.CANNOT_BE_TOLD : FitVerdict.FITS;
    }

    private List<Companions> companions(Placement placement, BuiltBox box, int mostUnits) {
        return CompanionSearch.of(judges, shelves.get(box.layout().id()), box.fitted(), placement, mostUnits);
    }

    /**
     * These sets against these boxes.
     *
     * @param mostCompanions how many further units are tried where a set does not fit as it is; each more takes far
     *     longer than the one before
     * @param progress is told how many sets are done, from any thread
     */
    public CrossTable cross(
            Collection<PartSet> sets, Collection<BuiltBox> boxes, int mostCompanions, IntConsumer progress) {
        return new CrossTables(this, mostCompanions).of(sets, boxes, progress);
    }

    /** What every check says of one meeting, with what stands in the box now against what stood there before. */
    public Stream<Judgement> judge(Meeting meeting, Fitted before, Fitted now) {
        return checks.judge(meeting, before, now).stream();
    }

    /** What is supplied today for a number, for boxes of this build. */
    public Supply supply(String number, BuiltBox box) {
        return supply(number, box.build().serials());
    }

    /** What is supplied today for a number, for all boxes of these serial numbers. */
    public Supply supply(String number, SerialRange boxes) {
        return Supply.of(number, boxes, catalogue);
    }

    /** Only how it comes out, with at most so many further units. */
    FitVerdict quickly(Placement placement, BuiltBox box, int mostCompanions) {
        Outcome worst = judges.worst(box.fitted(), box.fitted().with(placement.parts()));
        if (worst != Outcome.FAILS) {
            return worst == Outcome.HOLDS ? FitVerdict.FITS : FitVerdict.CANNOT_BE_TOLD;
        }
        return mostCompanions > 0
                        && companions(placement, box, mostCompanions).stream().anyMatch(Companions::told)
                ? FitVerdict.FITS_WITH
                : FitVerdict.DOES_NOT_FIT;
    }
}
