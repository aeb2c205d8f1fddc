package org.layshaft.engine.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Observation;
import org.layshaft.engine.api.Suspect;
import org.layshaft.engine.api.Suspect.Degree;
import org.layshaft.engine.api.Suspects;
import org.layshaft.engine.api.WhatIf;

/**
 * The suspects by another road: what each would show is taken from the rules, one what-if at a time, and held against the
 * evidence without dictionary, sets or weights.
 */
class SecondRoadTest {
    private static final int TOP = 20;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "curlew|pulling 1, 2, 4: growls; pulling 3, 5: not growls; neutral-pedal-up: growls",
                "curlew|selected 3, 4: no-drive; at-the-lever 3: moves-without-feel; selected 1: not no-drive",
                "curlew|pulling 3: jumps-out; shifting-into 3: hard-to-select; shifting-into 4: not hard-to-select",
                "lapwing|pulling 1, 2, 3: whines; pulling R: not whines; neutral-pedal-up: not whines",
                "lapwing|selected 2: locks-up; neutral-pedal-up: drives-in-neutral; selected 3: locks-up",
                "lapwing|shifting-into 1, 2, 3, 4, 5, 6, R: grinds-going-in; neutral-pedal-down: not growls"
            })
    void rules_one_by_one_say_the_same_of_the_first_suspects(String layout, String written) {
        Suspects suspects = Desk.suspects(layout, written);
        assertTrue(!suspects.singles().isEmpty());
        for (Suspect suspect : suspects.singles().stream().limit(TOP).toList()) {
            WhatIf answer =
                    Desk.REASONER.whatIf(Desk.layout(layout), suspect.ways().get(0));
            List<String> surely = new ArrayList<>();
            List<String> perhaps = new ArrayList<>();
            List<String> left = new ArrayList<>();
            List<String> wrong = new ArrayList<>();
            for (Observation observation : suspects.evidence().observations()) {
                for (Observation single : byGear(observation)) {
                    boolean certain = shown(answer, single, true);
                    boolean any = certain || shown(answer, single, false);
                    if (!single.seen()) {
                        (certain ? wrong : new ArrayList<String>()).add(single.written());
                    } else if (any) {
                        (certain ? surely : perhaps).add(single.written());
                    } else {
                        left.add(single.written());
                    }
                }
            }
            assertEquals(Set.copyOf(surely), explained(suspect, Degree.SURELY), suspect.says());
            assertEquals(Set.copyOf(perhaps), explained(suspect, Degree.PERHAPS), suspect.says());
            assertEquals(Set.copyOf(wrong), apart(suspect.wrong().stream()), suspect.says());
            Set<String> partly = explained(suspect, Degree.IN_PART);
            Set<String> unexplained = Stream.concat(partly.stream(), apart(suspect.unexplained().stream()).stream())
                    .collect(Collectors.toSet());
            assertEquals(Set.copyOf(left), unexplained, suspect.says());
        }
    }

    private static boolean shown(WhatIf answer, Observation single, boolean certain) {
        List<Notice> notices = single.gears().isEmpty()
                ? answer.neutral().notices()
                : answer.gear(single.gears().get(0)).orElseThrow().notices();
        return notices.stream()
                .anyMatch(notice -> notice.notice().equals(single.notice())
                        && notice.condition()
                                .equals(single.situation().orElseThrow().word())
                        && notice.certain() == certain);
    }

    private static Set<String> explained(Suspect suspect, Degree degree) {
        return apart(suspect.explains().stream()
                .filter(explained -> explained.degree() == degree)
                .map(Suspect.Explained::observation));
    }

    private static Set<String> apart(Stream<Observation> observations) {
        return observations
                .flatMap(observation -> byGear(observation).stream())
                .map(Observation::written)
                .collect(Collectors.toSet());
    }

    private static List<Observation> byGear(Observation observation) {
        return observation.gears().isEmpty()
                ? List.of(observation)
                : observation.gears().stream()
                        .map(gear -> observation.in(List.of(gear)))
                        .toList();
    }
}
