package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.asking.Asking;
import org.layshaft.web.asking.SymptomsHeard;
import org.layshaft.web.desk.BadInputException.Kind;

/**
 * Takes in what somebody noticed and says what may be wrong. Thread-safe.
 *
 * <p>Every method throws {@link BadInputException} where what was written cannot be used, with everything that is wrong.
 */
public final class DiagnosisDesk {
    private static final int LONGEST = 2000;
    private static final int MOST_OBSERVATIONS = 60;

    private final Diagnostician diagnostician;
    private final Asking asking;

    DiagnosisDesk(Diagnostician diagnostician, Asking asking) {
        this.diagnostician = diagnostician;
        this.asking = asking;
    }

    /**
     * What was noticed, as written: in the notation, {@code pulling 3: growls}, or in plain words, {@code growls pulling in
     * third}. Each may hold several observations.
     */
    public Evidence evidence(Layout layout, List<String> written) {
        List<String> problems = new ArrayList<>();
        List<Observation> observations = new ArrayList<>();
        boolean afterWork = false;
        for (String each : written) {
            try {
                Evidence evidence = evidence(layout, each);
                observations.addAll(evidence.observations());
                afterWork |= evidence.afterWork();
            } catch (UnanswerableException e) {
                problems.add(e.getMessage());
            }
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(Kind.NOT_UNDERSTOOD, String.join("\n", problems));
        }
        if (observations.size() > MOST_OBSERVATIONS) {
            throw new BadInputException(
                    Kind.MALFORMED,
                    "%d observations are given. Give at most %d.".formatted(observations.size(), MOST_OBSERVATIONS));
        }
        return new Evidence(observations, afterWork);
    }

    private Evidence evidence(Layout layout, String written) {
        if (written.length() > LONGEST) {
            throw new BadInputException(
                    Kind.MALFORMED,
                    "What was noticed is told in %d characters. Tell it in at most %d."
                            .formatted(written.length(), LONGEST));
        }
        try {
            return diagnostician.read(layout, written);
        } catch (UnanswerableException e) {
            if (written.indexOf(':') >= 0) {
                throw e;
            }
            SymptomsHeard heard = asking.understandSymptoms(layout, written);
            if (heard.unknown().isEmpty() && !heard.isNothing()) {
                return heard.evidence();
            }
            if (heard.isNothing()) {
                throw e;
            }
            throw new UnanswerableException("In '%s' nothing is known of %s. Say it otherwise, or leave it out."
                    .formatted(
                            written,
                            Names.joined(heard.unknown().stream()
                                    .map("'%s'"::formatted)
                                    .toList())));
        }
    }

    /** What may be wrong. */
    public Diagnosis diagnose(Layout layout, Evidence evidence) {
        try {
            return new Diagnosis(
                    layout,
                    evidence.observations().stream()
                            .map(observation ->
                                    new Diagnosis.Understood(observation, diagnostician.say(layout, observation)))
                            .toList(),
                    diagnostician.suspects(layout, evidence));
        } catch (UnanswerableException e) {
            throw new BadInputException(Kind.UNFIT, e.getMessage());
        }
    }

    /** An observation in words. */
    public String say(Layout layout, Observation observation) {
        return diagnostician.say(layout, observation);
    }
}
