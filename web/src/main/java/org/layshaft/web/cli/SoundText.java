package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.engine.sound.Match;
import org.layshaft.engine.sound.Measured;
import org.layshaft.engine.sound.Source;
import org.layshaft.engine.sound.SourceKind.Family;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.Listened;
import org.layshaft.web.desk.SoundWording;

/** What a box sounds, as plain text: what fits, then everything that repeats, then what cannot be told. */
final class SoundText {
    private final Listened listened;
    private final TextPage page = new TextPage();

    private SoundText(Listened listened) {
        this.listened = listened;
    }

    static String of(Listened listened) {
        return new SoundText(listened).write();
    }

    private String write() {
        page.paragraph("%s in %s.".formatted(listened.layout().name(), listened.says()));
        listened.measured().ifPresent(this::fits);
        page.paragraph("Everything that repeats so, by its order: how often for each turn of the input.");
        for (Family family : Family.values()) {
            List<Source> sources = listened.sounds().sources().stream()
                    .filter(source -> source.kind().family() == family)
                    .toList();
            if (!sources.isEmpty()) {
                page.paragraph(SoundWording.of(family) + ":").block(table(sources));
            }
        }
        page.list("Besides:", listened.sounds().untold());
        return page.toString();
    }

    private void fits(Measured measured) {
        String wanted = "%s Hz, within %s Hz"
                .formatted(Decimals.plain(measured.hz(), 2), Decimals.plain(measured.toleranceHz(), 2));
        if (listened.fits().isEmpty()) {
            page.paragraph("Nothing that can be told fits %s, up to the harmonic %d and %d sidebands to either side."
                    .formatted(
                            wanted,
                            listened.reach().harmonics(),
                            listened.reach().sidebands()));
            return;
        }
        page.paragraph("What fits %s, the likeliest first; nothing sets those of one rank apart:".formatted(wanted));
        for (Match match : listened.fits()) {
            page.item("  ", match.rank() + ". ", fit(match));
        }
    }

    private static String fit(Match match) {
        Source source = match.source();
        return "%s Hz, %s: %s%s; %s. Order %s%s = %s."
                .formatted(
                        SoundWording.hz(match.hz()),
                        SoundWording.off(match.offPercent()),
                        match.says().map(says -> says + ", of this: ").orElse(""),
                        source.what(),
                        SoundWording.load(source.loaded()),
                        SoundWording.exact(match.order()),
                        match.says().isPresent() ? ", from " + SoundWording.exact(source.order()) : "",
                        source.how());
    }

    private String table(List<Source> sources) {
        boolean timed = listened.inputRpm().isPresent();
        List<String> headings = new ArrayList<>(List.of("order", "exactly"));
        if (timed) {
            headings.add("Hz");
        }
        headings.addAll(List.of("load", "what"));
        TextTable table = new TextTable(headings.toArray(String[]::new));
        for (Source source : sources) {
            List<String> cells =
                    new ArrayList<>(List.of(SoundWording.decimal(source.order()), SoundWording.exact(source.order())));
            listened.inputRpm()
                    .ifPresent(rpm -> cells.add(SoundWording.hz(source.order().hz(rpm))));
            cells.add(SoundWording.load(source.loaded()));
            table.row(cells, List.of(source.what(), "= " + source.how()));
        }
        return table.toString();
    }
}
