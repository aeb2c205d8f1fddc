package org.layshaft.web.asking.answering;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.words.Names;

/** Says in what stance a motion is, and which of several possibilities it is that of. */
final class Stances {
    private Stances() {}

    /** The beginning of a sentence: {@code In 3rd}. */
    static String when(Optional<GearVerdict> gear) {
        return gear.map(each -> "In " + Names.gearName(each.gear())).orElse("In neutral, the vehicle standing,");
    }

    /** What is supposed of the failures; empty where nothing need be. */
    static Optional<String> supposed(Facts facts, Optional<GearVerdict> gear) {
        List<Possibility> possibilities = gear.map(GearVerdict::possibilities)
                .orElse(facts.whatIf().neutral().possibilities());
        return possibilities.size() < 2
                ? Optional.empty()
                : Optional.of(
                        "This supposes that %s.".formatted(possibilities.get(0).says()));
    }
}
