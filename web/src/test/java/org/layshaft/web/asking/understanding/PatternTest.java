package org.layshaft.web.asking.understanding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The notation of patterns. */
class PatternTest {

    @Test
    void isReadPieceByPiece() {
        Pattern pattern = Pattern.of("which|what gears (still|yet) [turn|go round] in {gear} ({faults}) the");
        assertEquals(
                List.of(
                        new Pattern.Choice(List.of(List.of("which"), List.of("what")), false),
                        new Pattern.Choice(List.of(List.of("gear")), false),
                        new Pattern.Choice(List.of(List.of("still"), List.of("yet")), true),
                        new Pattern.Choice(List.of(List.of("turn"), List.of("go", "round")), false),
                        new Pattern.Choice(List.of(List.of("in")), false),
                        new Pattern.Wanted(Pattern.Slot.GEAR, false),
                        new Pattern.Wanted(Pattern.Slot.FAULTS, true)),
                pattern.elements());
        assertEquals(Set.of("which", "what", "gear", "still", "yet", "turn", "go", "round", "in"), pattern.words());
    }

    /** Packs may hold such a pattern; it must not keep the others from being understood. */
    @ParameterizedTest
    @ValueSource(strings = {"the", " ", ""})
    void articlesAloneWantNothing(String written) {
        assertEquals(List.of(), Pattern.of(written).elements());
        assertEquals(Set.of(), Pattern.of(written).words());
    }

    @ParameterizedTest
    @ValueSource(strings = {"[open", "(open", "{lever}"})
    void saysWhatIsWrongWithIt(String written) {
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class, () -> Pattern.of(written));
        assertTrue(
                thrown.getMessage().contains("pattern") || thrown.getMessage().contains("slot"));
    }
}
