package org.layshaft.web.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> BOXES = List.of("avocet", "curlew", "plover");

    @Test
    void aSlipOfTheFingerIsSeenThrough() {
        assertEquals(List.of("curlew"), Nearest.to("curlw", BOXES));
        assertEquals(List.of("plover"), Nearest.to("PLOVRE", BOXES));
    }

    @Test
    void partOfANameIsEnough() {
        assertEquals(List.of("3-4-fork", "1-2-fork"), Nearest.to("4-fork", List.of("1-2-fork", "3-4-fork")));
    }

    @Test
    void whatIsFarFromAllIsLikeNone() {
        assertEquals(List.of(), Nearest.to("zzzzzzzz", BOXES));
    }
}
