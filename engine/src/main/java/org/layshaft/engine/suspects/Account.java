package org.layshaft.engine.suspects;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspect.Degree;

/** What a technician could read to a customer about one suspect. */
final class Account {
    /** More signs than this nobody listens to. */
    private static final int SIGNS = 3;

    private final ObservationWords words;

    Account(ObservationWords words) {
        this.words = words;
    }

    String of(
            String says,
            boolean normal,
            List<Suspect.Explained> explains,
            List<Observation> unexplained,
            List<Observation> wrong,
            List<Suspect.Sign> predicts) {
        List<String> sentences = new ArrayList<>();
        sentences.add(normal ? sentence(says) : "It may be that %s.".formatted(says));
        explained("That would be noticed as follows: %s.", of(explains, Degree.SURELY), sentences);
        explained("It does not always show so, but it can: %s.", of(explains, Degree.PERHAPS), sentences);
        explained(
                "It would show much like what was noticed, though not in the same words: %s.",
                of(explains, Degree.IN_PART), sentences);
        explained("It would not explain this: %s.", unexplained, sentences);
        explained("Against it speaks what was not found: %s.", wrong, sentences);
        if (!predicts.isEmpty() && !normal) {
            List<String> signs =
                    predicts.stream().limit(SIGNS).map(Suspect.Sign::says).toList();
            sentences.add("If it is so, one should also find: %s.".formatted(String.join("; ", signs)));
        }
        return String.join(" ", sentences);
    }

    private void explained(String frame, List<Observation> observations, List<String> sentences) {
        if (!observations.isEmpty()) {
            sentences.add(frame.formatted(
                    String.join("; ", observations.stream().map(words::say).toList())));
        }
    }

    private static List<Observation> of(List<Suspect.Explained> explains, Degree degree) {
        return explains.stream()
                .filter(explained -> explained.degree() == degree)
                .map(Suspect.Explained::observation)
                .toList();
    }

    private static String sentence(String clause) {
        return clause.substring(0, 1).toUpperCase(Locale.ROOT) + clause.substring(1) + ".";
    }
}
