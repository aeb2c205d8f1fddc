package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.api.WhatIf;

/** Where nothing is wrong nothing is noticed: all that a fault shows is a change from the sound box. */
class SoundNoticesTest {

    static Stream<String> layouts() {
        return Bench.KNOWLEDGE.layouts().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void a_sound_box_shows_nothing(String layout) {
        WhatIf sound = Bench.REASONER.whatIf(Bench.layout(layout), List.of());
        assertEquals(List.of(), sound.neutral().notices());
        sound.gears().forEach(gear -> {
            assertEquals(List.of(), gear.notices(), gear.gear());
            assertEquals(Verdict.WORKS, gear.verdict(), gear.gear());
        });
    }
}
