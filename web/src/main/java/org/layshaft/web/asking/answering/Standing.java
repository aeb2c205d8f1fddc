package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.words.Names;
import org.layshaft.web.asking.Saying;

/** Says how some gears stand, those of one verdict together. */
final class Standing {
    private final Facts facts;

    Standing(Facts facts) {
        this.facts = facts;
    }

    List<String> of(List<GearVerdict> gears) {
        List<String> says = new ArrayList<>();
        List<String> driving = named(gears, Verdict.WORKS, Verdict.WORKS_WITH_NOTICE);
        if (!driving.isEmpty()) {
            String still = facts.isSound() ? "" : "still ";
            says.add(Saying.sentence(
                    "%s %s%s.".formatted(Saying.gears(driving), still, driving.size() == 1 ? "works" : "work")));
        }
        List<String> doubtful = named(gears, Verdict.UNCERTAIN);
        if (!doubtful.isEmpty()) {
            says.add(
                    Saying.sentence("%s %s in doubt%s.".formatted(Saying.gears(doubtful), are(doubtful), dependsOn())));
        }
        List<String> lost = named(gears, Verdict.LOST);
        if (!lost.isEmpty()) {
            says.add(Saying.sentence("%s %s lost.".formatted(Saying.gears(lost), are(lost))));
        }
        List<String> locking = named(gears, Verdict.LOCKS);
        if (!locking.isEmpty()) {
            says.add(Saying.sentence(
                    "%s %s the box.".formatted(Saying.gears(locking), locking.size() == 1 ? "locks" : "lock")));
        }
        if (driving.isEmpty() && doubtful.isEmpty() && gears.size() > 1) {
            says.add("No gear drives.");
        }
        return says;
    }

    /** How the lever in neutral stands, where it is not as it should be. */
    List<String> ofNeutral() {
        return switch (facts.whatIf().neutral().verdict()) {
            case LOST -> List.of("In neutral it drives all the same.");
            case UNCERTAIN -> List.of("It may drive in neutral" + dependsOn() + ".");
            case LOCKS -> List.of("In neutral the box is locked.");
            default -> List.of();
        };
    }

    static String sentence(String words) {
        String begun = Saying.sentence(words.strip());
        return begun.isEmpty() || begun.endsWith(".") || begun.endsWith("?") ? begun : begun + ".";
    }

    private String dependsOn() {
        List<String> open = facts.whatIf().faults().stream()
                .flatMap(fault -> facts.faultWords().open(fault).stream())
                .toList();
        return open.isEmpty() ? "" : ": it depends on " + Names.joined(open);
    }

    private static List<String> named(List<GearVerdict> gears, Verdict... verdicts) {
        List<Verdict> wanted = List.of(verdicts);
        return gears.stream()
                .filter(gear -> wanted.contains(gear.verdict()))
                .map(GearVerdict::gear)
                .toList();
    }

    private static String are(List<String> gears) {
        return gears.size() == 1 ? "is" : "are";
    }
}
