package org.layshaft.web.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.web.board.LineDiff.In;
import org.layshaft.web.board.LineDiff.Line;

class LineDiffTest {
    @ParameterizedTest
    @CsvSource({
        "abc, abc, ' a b c'",
        "abc, axc, ' a-b+x c'",
        "abc, ac, ' a-b c'",
        "ac, abc, ' a+b c'",
        "'', ab, '+a+b'",
        "ab, '', '-a-b'",
        "abcabba, cbabac, ''"
    })
    void whatOnlyOneHasIsTold(String one, String other, String told) {
        List<Line> lines = LineDiff.between(lines(one), lines(other));
        if (!told.isEmpty()) {
            assertEquals(told, lines.stream().map(LineDiffTest::sign).collect(Collectors.joining()));
        }
        assertEquals(one, kept(lines, In.SECOND));
        assertEquals(other, kept(lines, In.FIRST));
    }

    /** Both texts can be had again, and no longer common part is found by trying all. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void asMuchAsCanBeStays(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 60; round++) {
            String one = drawn(random);
            String other = drawn(random);
            List<Line> lines = LineDiff.between(lines(one), lines(other));
            assertEquals(one, kept(lines, In.SECOND), one + "/" + other);
            assertEquals(other, kept(lines, In.FIRST), one + "/" + other);
            assertEquals(
                    longest(one, other),
                    lines.stream().filter(line -> line.in() == In.BOTH).count(),
                    one + "/" + other);
        }
    }

    @Test
    void linesHaveTheNumberThatTheyHaveInTheirText() {
        assertEquals(
                List.of(1, 2, 2, 3),
                LineDiff.between(lines("abc"), lines("axc")).stream()
                        .map(Line::number)
                        .toList());
    }

    @Test
    void whatIsBeyondComparingIsAllTakenOutAndPutIn() {
        String one = "a\n".repeat(2_500) + "x\n";
        String other = "b\n".repeat(2_500) + "x\n";
        List<Line> lines = LineDiff.between(one, other);
        assertEquals(5_001, lines.size());
        assertEquals(In.FIRST, lines.get(0).in());
        assertEquals(In.BOTH, lines.get(5_000).in());
    }

    private static long longest(String one, String other) {
        if (one.isEmpty() || other.isEmpty()) {
            return 0;
        }
        String restOfOne = one.substring(1);
        String restOfOther = other.substring(1);
        return one.charAt(0) == other.charAt(0)
                ? 1 + longest(restOfOne, restOfOther)
                : Math.max(longest(restOfOne, other), longest(one, restOfOther));
    }

    private static String drawn(Random random) {
        return random.ints(random.nextInt(7), 'a', 'd')
                .mapToObj(letter -> "" + (char) letter)
                .collect(Collectors.joining());
    }

    private static String lines(String letters) {
        return letters.chars().mapToObj(letter -> (char) letter + "\n").collect(Collectors.joining());
    }

    private static String kept(List<Line> lines, In without) {
        return lines.stream()
                .filter(line -> line.in() != without)
                .map(Line::text)
                .collect(Collectors.joining());
    }

    private static String sign(Line line) {
        return (line.in() == In.BOTH ? " " : line.in() == In.FIRST ? "-" : "+") + line.text();
    }
}
