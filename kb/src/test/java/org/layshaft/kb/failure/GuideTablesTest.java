package org.layshaft.kb.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The tables of the developers' guide name every situation, occasion and effect, and none besides. */
class GuideTablesTest {
    private static final Path GUIDE = Path.of("..", "DEVELOPERS.md");
    private static final Pattern ROW = Pattern.compile("^\\| `([a-z-]+)` \\| \\S.*\\|$", Pattern.MULTILINE);

    @Test
    void situations() throws IOException {
        assertEquals(words(Situation.values(), Situation::word), named("| situation | when |"));
    }

    @Test
    void occasions() throws IOException {
        assertEquals(words(NoticeWhen.values(), NoticeWhen::word), named("| occasion | holds |"));
    }

    @Test
    void effects() throws IOException {
        assertEquals(words(EffectKind.values(), EffectKind::word), named("| effect | changes |"));
    }

    private static <E> Set<String> words(E[] all, Function<E, String> word) {
        return Arrays.stream(all).map(word).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The first column of the table under this head. */
    private static Set<String> named(String head) throws IOException {
        String guide = Files.readString(GUIDE);
        int from = guide.indexOf(head);
        String table = guide.substring(from, guide.indexOf("\n\n", from));
        List<String> names = ROW.matcher(table)
                .results()
                .map((MatchResult row) -> row.group(1))
                .toList();
        assertEquals(table.lines().count() - 2, names.size(), "one name a row: " + head);
        return new TreeSet<>(names);
    }
}
