package org.layshaft.web.asking;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.WhatIf;

/**
 * An answer.
 *
 * @param understood the question in our words
 * @param says the answer in a few plain sentences, each computed from what follows
 * @param whatIf every gear, with its reasons
 * @param gearsMeant the gears the question is about; empty for all
 * @param stance where sleeves stand in what was asked about, for the drawing
 * @param motion how everything turns then; empty where the question has no one motion
 * @param partsMeant ids of the parts the question is about
 * @param conflicts the pairs the question is about
 */
public record Answer(
        Question question,
        String understood,
        List<String> says,
        WhatIf whatIf,
        List<String> gearsMeant,
        Stance stance,
        Optional<Motion> motion,
        List<String> partsMeant,
        List<Conflict> conflicts) {
    public Answer {
        says = List.copyOf(says);
        gearsMeant = List.copyOf(gearsMeant);
        partsMeant = List.copyOf(partsMeant);
        conflicts = List.copyOf(conflicts);
    }
}
