package org.layshaft.kb.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.testing.Marked;

/** What a line of a failure mode says, as read from a file, and what an occasion allows it to say. */
class NoticeLinesTest {
    private static final List<FailureMode> MODES =
            PackReader.check(List.of(Marked.resource("sound-pack"))).knowledge().failureModes();

    @Test
    void everything_that_a_line_says_is_read() {
        assertEquals(
                List.of(
                        new NoticeLine(
                                "pipes",
                                NoticeWhen.IN_ITS_GEAR,
                                Set.of(Situation.PULLING, Situation.OVERRUN),
                                Optional.of(Heat.HOT),
                                true,
                                Optional.of(new Given.Told("side")),
                                Map.of("side", "rear")),
                        new NoticeLine(
                                "noise",
                                NoticeWhen.AT_ITS_GEAR,
                                Set.of(Situation.AT_THE_LEVER),
                                Optional.empty(),
                                false,
                                Optional.empty(),
                                Map.of())),
                mode("fork/creased").noticed());
    }

    @Test
    void what_a_mode_says_beside_its_lines_is_read() {
        FailureMode creased = mode("fork/creased");
        assertEquals(Depth.COVER, creased.seenAt());
        assertTrue(creased.followsWork());
        assertFalse(creased.normal());
        assertEquals(Depth.STRIPPED, mode("gear/bored").seenAt());
        assertFalse(mode("gear/bored").followsWork());
    }

    @ParameterizedTest
    @EnumSource(NoticeWhen.class)
    void an_occasion_can_hold_where_it_is_asked_unless_said(NoticeWhen when) {
        assertFalse(when.unlessSaid().isEmpty());
        when.unlessSaid().forEach(situation -> assertTrue(when.canHoldIn(situation), situation.word()));
    }

    @ParameterizedTest
    @EnumSource(NoticeWhen.class)
    void an_occasion_can_be_asked_of_some_part(NoticeWhen when) {
        assertTrue(Set.of(PartKind.values()).stream().anyMatch(when::canBeAskedOf));
    }

    private static FailureMode mode(String id) {
        return MODES.stream().filter(mode -> mode.id().equals(id)).findFirst().orElseThrow();
    }
}
