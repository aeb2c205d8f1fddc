package org.layshaft.web.asking.understanding;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Part;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.asking.Sides;

/** What to say where the words for a failure cannot stand in this box, and what was perhaps meant. */
final class FaultProblems {
    private static final int MOST_OFFERS = 5;

    private final Heard heard;
    private final BoxWords words;
    private final Set<Integer> used;

    /**
     * @param used takes up the words that a problem explains
     */
    FaultProblems(Heard heard, Set<Integer> used) {
        this.heard = heard;
        this.words = heard.words();
        this.used = used;
    }

    /** Every failure there can be in a box. */
    static Stream<Fault> all(BoxWords words) {
        return words.layout().parts().values().stream()
                .flatMap(part -> words.modesFor(part.id()).map(mode -> Fault.of(part.id(), mode.name())));
    }

    /** A part of this name there is none; there are others of its kind. */
    FaultsHeard.Problem absent(String typed, FaultClue clue) {
        String says = "%s has no %s. It has %s."
                .formatted(words.layout().name(), typed, words.names().list(clue.parts()));
        return new FaultsHeard.Problem(says, offers(clue.parts(), clue.mode()));
    }

    /** A side is told by a gear that does not lie on any side of this part. */
    FaultsHeard.Problem wrongSide(Fault fault, Mention gear) {
        List<String> sides = List.of("front", "rear").stream()
                .flatMap(side -> Sides.gearAt(words.box(), fault.part(), side).stream())
                .map(Names::gearName)
                .toList();
        use(gear);
        String the = words.names().the(fault.part());
        boolean toward = words.modesFor(fault.part())
                .filter(mode -> mode.name().equals(fault.mode()))
                .anyMatch(mode -> mode.unlessTold().containsKey("side"));
        String says = sides.isEmpty()
                ? "%s has no side with %s.".formatted(Saying.sentence(the), gear.typed())
                : "%s serves %s, so it cannot be %s %s %s."
                        .formatted(
                                Saying.sentence(the),
                                Names.joined(sides),
                                fault.mode(),
                                toward ? "toward" : "in",
                                gear.typed());
        return new FaultsHeard.Problem(says, List.of(Fault.of(fault.part(), fault.mode())));
    }

    /** A way of failing that is said of no part, or of one that cannot fail so, or of one that is elsewhere. */
    FaultsHeard.Problem withoutPart(Mention mode) {
        List<String> able = words.layout().parts().values().stream()
                .filter(part -> mode.modes().stream().anyMatch(each -> each.canBefall(part)))
                .map(Part::id)
                .toList();
        use(mode);
        return saidOf(mode).map(said -> of(said, mode, able)).orElseGet(() -> {
            String says = able.isEmpty() ? "Nothing in %2$s can be %1$s." : "It does not say what is %1$s.";
            return new FaultsHeard.Problem(
                    says.formatted(mode.typed(), words.layout().name()), offers(able, mode));
        });
    }

    /** What the failure is said of: the nearest thing mentioned that is not yet explained. */
    private Optional<Mention> saidOf(Mention mode) {
        return heard.mentions().stream()
                .filter(mention -> !used.contains(mention.from()))
                .filter(mention -> !mention.parts().isEmpty()
                        || mention.gear().isPresent()
                        || mention.one(Meaning.Elsewhere.class).isPresent()
                        || mention.one(Meaning.NoSuchGear.class).isPresent())
                .min(Comparator.comparingInt(mention -> heard.distance(mention, mode)));
    }

    private FaultsHeard.Problem of(Mention said, Mention mode, List<String> able) {
        use(said);
        if (!said.parts().isEmpty()) {
            return cannot(said, mode, able);
        }
        String box = words.layout().name();
        Optional<String> gear = said.gear();
        if (gear.isPresent()) {
            List<String> serving = able.stream()
                    .filter(part -> words.belongings().serves(part, gear.get()))
                    .toList();
            String says = "%s has no wheel of its own for %s.".formatted(box, Names.gearName(gear.get()));
            return new FaultsHeard.Problem(says, offers(serving.isEmpty() ? able : serving, mode));
        }
        Optional<Meaning.Elsewhere> there = said.one(Meaning.Elsewhere.class);
        List<String> kin = able.stream()
                .filter(part -> there.filter(
                                other -> other.kind() != words.part(part).kind())
                        .isEmpty())
                .toList();
        return new FaultsHeard.Problem(Absence.says(words, said), offers(kin.isEmpty() ? able : kin, mode));
    }

    private FaultsHeard.Problem cannot(Mention said, Mention mode, List<String> able) {
        String part = said.parts().get(0);
        List<String> can = words.modesFor(part).map(FailureMode::name).toList();
        String what = said.parts().size() == 1 ? words.names().the(part) : "the " + said.typed();
        String says = can.isEmpty()
                ? "No failure of %s is known here, so it cannot be %s.".formatted(what, mode.typed())
                : "%s cannot be %s here. It can be: %s."
                        .formatted(Saying.sentence(what), mode.typed(), String.join(", ", can));
        Stream<Fault> ofPart =
                said.parts().stream().flatMap(id -> words.modesFor(id).map(each -> Fault.of(id, each.name())));
        List<String> near = able.stream()
                .filter(other -> words.belongings().belongs(other, said))
                .toList();
        return new FaultsHeard.Problem(
                says,
                Stream.concat(ofPart, offers(near, mode).stream())
                        .distinct()
                        .limit(MOST_OFFERS)
                        .toList());
    }

    private List<Fault> offers(List<String> parts, Mention mode) {
        return parts.stream()
                .flatMap(part -> mode.modes().stream()
                        .filter(each -> each.canBefall(words.part(part)))
                        .map(each -> Fault.of(part, each.name())))
                .limit(MOST_OFFERS)
                .toList();
    }

    private void use(Mention mention) {
        IntStream.range(mention.from(), mention.to()).forEach(used::add);
    }
}
