package org.layshaft.web.asking.answering;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.web.asking.NoticedTogether;

/** What is noticed, situations and gears in which it is the same together, what is certain first. */
final class Noticing {
    private final Facts facts;

    Noticing(Facts facts) {
        this.facts = facts;
    }

    /** A sentence each; neutral among them where no gear is asked about by itself. */
    List<String> in(List<GearVerdict> gears, boolean withNeutral) {
        Map<String, List<Notice>> byGear = new LinkedHashMap<>();
        gears.forEach(gear -> byGear.put(gear.gear(), gear.notices()));
        if (withNeutral) {
            byGear.put(NoticedTogether.NEUTRAL, facts.whatIf().neutral().notices());
        }
        return NoticedTogether.in(byGear).stream()
                .map(noticed -> Standing.sentence(noticed.says(facts.names())))
                .toList();
    }
}
