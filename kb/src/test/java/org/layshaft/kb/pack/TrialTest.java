package org.layshaft.kb.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.start.Starts;
import org.layshaft.kb.testing.Packs;

/** A layout seen in its pack before it stands there. */
class TrialTest {
    private static final String DUNLIN = Starts.of("dunlin").orElseThrow().text();

    @TempDir
    private Path folder;

    @Test
    void without_a_pack_there_is_one_for_it() throws IOException {
        Trial trial = tried("own", DUNLIN);

        assertEquals(List.of(), trial.own());
        assertEquals("dunlin", trial.layout().orElseThrow().id());
        assertEquals(List.of(), trial.brokenElsewhere(List.of()));
        try (Stream<Path> nothing = Files.list(folder)) {
            assertEquals(0, nothing.count());
        }
    }

    @Test
    void what_stands_in_its_place_makes_room() throws IOException {
        write("own/pack.json", Packs.manifest("own"));
        write("own/layouts/dunlin.json", "broken");
        Trial trial = tried("own", DUNLIN);
        assertEquals(Optional.of("dunlin"), trial.layout().map(layout -> layout.id()));
        assertEquals(List.of(), trial.all());
    }

    @Test
    void what_is_wrong_with_it_is_found_at_its_lines_and_there_is_no_layout() {
        Trial trial = tried("own", DUNLIN.replace("\"teeth\": 20, \"meshes\"", "\"teeth\": 2, \"meshes\""));

        assertTrue(trial.layout().isEmpty());
        assertEquals(10, trial.own().get(0).line());
        assertEquals("/shafts/input/along/1/teeth", trial.own().get(0).pointer());
    }

    @Test
    void what_it_would_break_elsewhere_is_told_and_what_was_broken_before_is_not() throws IOException {
        write("own/pack.json", Packs.manifest("own"));
        write("own/layouts/dunlin.json", DUNLIN);
        write("own/layouts/other.json", "{");
        write("own/layouts/two.json", """
                {"format": "layshaft/layout/1", "id": "two", "units": {"box": "dunlin"}}
                """);
        List<Finding> before =
                PackReader.read(sources(List.of(PackSource.packsIn(folder)))).findings();
        Trial sound = tried("own", DUNLIN);
        assertEquals(List.of(), sound.brokenElsewhere(before));
        assertTrue(sound.layout().isPresent());

        Trial breaking = tried("own", DUNLIN.replace("\"dunlin\"", "\"dunlins\""));
        assertFalse(breaking.brokenElsewhere(before).isEmpty());
        assertTrue(breaking.brokenElsewhere(before).get(0).file().endsWith("two.json"));
    }

    @Test
    void among_layouts_that_do_not_change_only_those_that_are_mentioned_are_read() throws IOException {
        write("given/pack.json", Packs.manifest("given"));
        write("given/layouts/some-name.json", DUNLIN);
        write("given/layouts/two.json", """
                {"format": "layshaft/layout/1", "id": "two", "units": {"box": "dunlin"}}
                """);
        write("given/layouts/tattler.json", Starts.of("tattler").orElseThrow().text());
        FixedLayouts fixed = FixedLayouts.of(PackSource.packsIn(folder.resolve("given")));
        assertEquals(Optional.of(DUNLIN), fixed.text("dunlin"));
        assertEquals(Optional.empty(), fixed.text("curlew"));

        List<PackSource> mentioned = fixed.mentionedIn(List.of("{\"units\": {\"box\": \"two\"}}"));
        assertEquals(
                List.of("some-name.json", "two.json"),
                mentioned.stream()
                        .flatMap(source -> source.files().files().stream())
                        .map(file -> Path.of(file.name()).getFileName().toString())
                        .toList());
        TriedLayout again = new TriedLayout("own", "dunlin", DUNLIN, Packs.manifest("own"));
        List<PackSource> sources = Stream.concat(
                        fixed.mentionedIn(List.of(DUNLIN)).stream(), Stream.of(PackSource.of(again)))
                .toList();
        Trial trial = PackReader.tryOut(sources, again.file(Path.of("")));
        assertTrue(trial.own().get(0).what().contains("another layout 'dunlin' already"), trial.own()::toString);
    }

    private Trial tried(String pack, String text) {
        TriedLayout tried = new TriedLayout(pack, "dunlin", text, Packs.manifest(pack));
        return PackReader.tryOut(sources(List.of(PackSource.packsIn(folder, tried))), tried.file(folder));
    }

    private static List<PackSource> sources(List<List<PackSource>> more) {
        return Stream.concat(Stream.of(PackSource.trade()), more.stream().flatMap(List::stream))
                .toList();
    }

    private void write(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }
}
