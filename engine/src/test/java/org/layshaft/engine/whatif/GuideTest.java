package org.layshaft.engine.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.Notice;
import org.layshaft.engine.api.Verdict;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.kb.pack.PackReader;
import org.layshaft.kb.pack.Reading;

/** The layout and the failure mode that the developers' guide prints do what it says of them. */
class GuideTest {
    private static final Path GUIDE = Path.of("..", "DEVELOPERS.md");
    private static final Pattern EXAMPLE = Pattern.compile("```jsonc\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern ID = Pattern.compile("\"id\": \"([a-z0-9-]+)\"");
    private static final String MANIFEST = """
            {"format": "layshaft/pack/1", "id": "guide", "version": "1.0.0", "title": "Guide", "licence": "Apache-2.0"}
            """;

    @TempDir
    private Path pack;

    private Reading reading;

    @BeforeEach
    void put_the_examples_in_a_pack() throws IOException {
        Files.writeString(pack.resolve("pack.json"), MANIFEST);
        Path layouts = Files.createDirectory(pack.resolve("layouts"));
        Path modes = Files.createDirectory(pack.resolve("failure-modes"));
        Path catalogues = Files.createDirectory(pack.resolve("catalogues"));
        Path phrases = Files.createDirectory(pack.resolve("phrases"));
        for (MatchResult found :
                EXAMPLE.matcher(Files.readString(GUIDE)).results().toList()) {
            String example = found.group(1);
            Matcher id = ID.matcher(example);
            Path others = modes.resolve("fork.json");
            if (example.contains("layshaft/catalogue/1")) {
                others = catalogues.resolve("parts.json");
            } else if (example.contains("layshaft/phrases/1")) {
                others = phrases.resolve("questions.json");
            }
            Files.writeString(id.find() ? layouts.resolve(id.group(1) + ".json") : others, example);
        }
        reading = PackReader.check(List.of(pack));
    }

    @Test
    void the_examples_load_without_a_finding() {
        assertEquals(List.of(), reading.findings());
    }

    @Test
    void the_layout_comes_to_the_ratios_printed_for_it() {
        Box box = Reasoners.standard(reading.knowledge()).box(dunlin());
        assertEquals(List.of(), box.differences());
        assertEquals(
                List.of("1", "2"),
                box.gears().stream().map(Box.DerivedGear::name).toList());
    }

    /** The gear drives whichever side of the fork is scored; only whether it jumps out depends on that. */
    @Test
    void what_is_noticed_in_one_possibility_alone_leaves_no_doubt_about_the_drive() {
        KnowledgeBase knowledge = reading.knowledge();
        GearVerdict first = Reasoners.standard(knowledge)
                .whatIf(dunlin(), List.of(Fault.of("1-2-fork", "scored")))
                .gear("1")
                .orElseThrow();
        assertEquals(Verdict.WORKS_WITH_NOTICE, first.verdict());
        assertEquals(
                Set.of("jumps-out", "rubs"),
                first.notices().stream().map(Notice::notice).collect(Collectors.toSet()));
        assertTrue(first.notices().stream().noneMatch(Notice::certain));
        assertEquals(2, first.possibilities().size());
    }

    private Layout dunlin() {
        return reading.knowledge().layout("dunlin").orElseThrow();
    }
}
