package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed, there is an understanding, and no exception. */
class HostileTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0000\u0001\u0007 third \u001b[31m ratio",
                "🙂🙃 3-4 fork 🔧 bent",
                "(((((([[[[{{{{ .*+?^$ \\E\\Q (a+)+$ third",
                "3-4-3-4-3-4-3-4-3-4-3-4-3-4",
                "and and and and and and bent bent bent bent",
                "' '' ''' 's 'll 've",
                "\uD800 \uDC00 third",
                "%s %d %n {0} ${x} third bent",
                "ﬁfth ﬁfth ½ ①",
                "<script>alert(1)</script>",
            })
    void strangeSigns(String words) {
        assertNotNull(Saltmarsh.understood("curlew", words));
        assertNotNull(Saltmarsh.ASKING.understandFaults(Saltmarsh.layout("curlew"), words));
    }

    @Test
    void longTextIsCutAndThatIsSaid() {
        Understanding.Understood understood =
                (Understanding.Understood) Saltmarsh.understood("curlew", "ratio of third" + " ".repeat(10_000));
        assertTrue(understood.reading().says().endsWith("Only the first 500 characters were read."));
        assertNotNull(Saltmarsh.understood("curlew", "3-4 fork bent and ".repeat(600)));
        assertNotNull(Saltmarsh.understood("curlew", "x".repeat(10_000)));
    }

    @ParameterizedTest
    @MethodSource("org.layshaft.web.asking.ExamplesTest#examples")
    void piecesAndShuffledWordsOfExamples(String intent, String example) {
        for (int length = 0; length < example.length(); length += 7) {
            assertNotNull(Saltmarsh.understood("curlew", example.substring(0, length)));
        }
        List<String> words = new ArrayList<>(Arrays.asList(example.split(" ")));
        Random random = new Random(example.hashCode());
        for (int round = 0; round < 3; round++) {
            Collections.shuffle(words, random);
            String shuffled = String.join(" ", words);
            assertNotNull(Saltmarsh.ASKING.understand(Optional.of("plover"), shuffled), shuffled);
            assertNotNull(Saltmarsh.ASKING.understandFaults(Saltmarsh.layout("avocet"), shuffled), shuffled);
        }
    }
}
