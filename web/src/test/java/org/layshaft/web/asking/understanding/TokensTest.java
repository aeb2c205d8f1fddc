package org.layshaft.web.asking.understanding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words as typed, cut, made plain and mended. */
class TokensTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "The 3-4 fork's bent | 3 4 fork bent",
                "3/4 3rd-4th third–fourth | 3 4 3 4 3 4",
                "1st, 2nd & reverse + Rev | 1 2 and r and r",
                "it doesn't; what'll it? | it doesnt what it",
                "gears turns this loss axis | gear turn this loss axis",
                "ratio 3.08 to 1 | ratio 3.08 to 1",
                "Ｔｈｉｒｄ gear | 3 gear",
            })
    void areMadePlain(String typed, String words) {
        assertEquals(List.of(words.split(" ")), Tokens.normal(typed));
    }

    @ParameterizedTest
    @CsvSource({
        "thrid, 3",
        "forth, 4",
        "fith, 5",
        "fist, 1",
        "secnd, 2",
        "ninth, 9",
        "sixth, 6",
        "countershfat, countershaft",
        "contershaf, countershaft",
        "cuntrshft, cuntrshft",
        "striped, stripped",
        "frok, frok",
        "grea, grea",
        "table, table",
        "wich, which",
    })
    void areMended(String typed, String mended) {
        Spelling spelling = new Spelling(
                Set.of("countershaft", "stripped", "fork", "gear", "cable", "sable", "winch", "which"),
                Set.of("which"));
        assertEquals(mended, spelling.mend(Tokens.normalWord(typed)));
    }

    @ParameterizedTest
    @CsvSource({"fork, frok, 1", "third, thrid, 1", "sleeve, sleev, 1", "first, fifth, 3", "ring, rung, 1", "a, '', 1"})
    void editsAreCounted(String one, String other, int edits) {
        assertEquals(edits, Spelling.edits(one, other));
        assertEquals(edits, Spelling.edits(other, one));
    }
}
