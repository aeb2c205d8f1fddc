package org.layshaft.engine.whatif;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.layshaft.engine.fault.KnownFault;
import org.layshaft.engine.fault.Served;
import org.layshaft.engine.fault.Sides;
import org.layshaft.engine.rules.fact.Circumstances;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.rules.fact.Faulty;
import org.layshaft.engine.symptom.Concerned;
import org.layshaft.engine.symptom.SpeedRead;
import org.layshaft.kb.failure.NoticeLine;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Side;

/** What the faults of one world are noticed by, and of how everything turns then as much as they ask. */
final class NoticeFacts {
    private final Layout layout;
    private final FaultFacts faults;
    private final CircumstanceFacts circumstances;
    private final Set<Fact> facts = new LinkedHashSet<>();

    private NoticeFacts(Layout layout, FaultFacts faults, CircumstanceFacts circumstances) {
        this.layout = layout;
        this.faults = faults;
        this.circumstances = circumstances;
    }

    static List<Fact> of(Layout layout, FaultFacts faults, CircumstanceFacts circumstances) {
        NoticeFacts notices = new NoticeFacts(layout, faults, circumstances);
        faults.faults().forEach(notices::add);
        return List.copyOf(notices.facts);
    }

    private void add(KnownFault known) {
        Part part = layout.the(Part.class, known.fault().part());
        known.mode().noticed().stream()
                .filter(line -> line.appliesTo(known.fault().told()))
                .forEach(line -> add(line, known, part));
    }

    private void add(NoticeLine line, KnownFault known, Part part) {
        Faulty.Present here = FaultFacts.present(known);
        line.in().stream().sorted().forEach(situation -> {
            shows(line, situation, known, part, here).forEach(facts::add);
            facts.addAll(circumstances.of(line.when(), situation, part));
        });
        if (line.when() == NoticeWhen.WHILE_IT_TURNS_IN_MESH) {
            inMesh(part, here).forEach(facts::add);
        }
        if (line.when() == NoticeWhen.WHERE_SPEED_IS_READ_STANDING) {
            SpeedRead.from(layout).forEach(body -> facts.add(new Circumstances.SpeedReadFrom(body)));
        }
    }

    private Stream<Faulty.Shows> shows(
            NoticeLine line, Situation situation, KnownFault known, Part part, Faulty.Present here) {
        Optional<Side> only =
                line.side().map(given -> given.in(known.fault().told())).flatMap(Sides::of);
        List<Served> served = asksWhatItServes(line.when()) ? Served.by(layout, part) : List.of();
        return served.isEmpty()
                ? Stream.of(shows(line, situation, "", null, here))
                : served.stream().map(serves -> {
                    Side side = only.or(serves::side).orElse(null);
                    return shows(line, situation, serves.member(), side, here);
                });
    }

    private static boolean asksWhatItServes(NoticeWhen when) {
        return when == NoticeWhen.IN_ITS_GEAR || when == NoticeWhen.AT_ITS_GEAR;
    }

    private Faulty.Shows shows(NoticeLine line, Situation situation, String member, Side side, Faulty.Present here) {
        return new Faulty.Shows(
                line.notice(),
                line.when(),
                situation,
                line.heat(),
                line.may(),
                member,
                side,
                through(member, side, here),
                here);
    }

    /** The changes that this fault makes to how a member engages on a side. */
    private List<Faulty.Change> through(String member, Side side, Faulty.Present here) {
        return faults.facts().stream()
                .filter(Faulty.Change.class::isInstance)
                .map(Faulty.Change.class::cast)
                .filter(change -> change.fault().equals(here))
                .filter(change -> change instanceof Faulty.ReachesPartWay part
                                && part.member().equals(member)
                                && part.side() == side
                        || change instanceof Faulty.StandsOffCentre off
                                && off.member().equals(member)
                                && off.side() == side)
                .toList();
    }

    private Stream<Fact> inMesh(Part part, Faulty.Present here) {
        return Concerned.of(layout, part).bodies().stream()
                .flatMap(body -> layout.meshes().stream()
                        .filter(mesh -> mesh.joins(body))
                        .map(mesh -> new Faulty.RunsAgainst(body, mesh.other(body), here)));
    }
}
