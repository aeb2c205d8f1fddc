package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.engine.identify.Candidate;
import org.layshaft.engine.identify.Identification;
import org.layshaft.engine.spline.SplineEntry;
import org.layshaft.engine.stated.Telling;
import org.layshaft.web.desk.BenchAnswer;
import org.layshaft.web.desk.BenchDesk;
import org.layshaft.web.desk.BenchRequest;
import org.layshaft.web.desk.BenchWording;
import org.layshaft.web.desk.Units;
import org.layshaft.web.json.IdentifyJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says what a gear measured at the bench may be, and what a spline measures. */
@Command(
        name = "identify",
        description =
                "Say which standard gears agree with what was measured at the bench, and what the designation of a"
                        + " spline comes to in dimensions.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft identify --teeth 34 --tip 88.4 --helix 0 --span \"4 27.1\" --span \"5 34.5\"",
            "  layshaft identify --spline \"W 30 x 2 x 14 x 8f\" --hub \"N 30 x 2 x 14 x 9H\""
        })
final class IdentifyCommand extends Subcommand {
    private static final int MOST = 8;

    @Option(names = "--form", paramLabel = "FORM", description = "external or internal. Default: external.")
    private String form;

    @Option(names = "--teeth", paramLabel = "N", description = "The number of teeth, counted.")
    private String teeth;

    @Option(names = "--tip", paramLabel = "MM", description = "The tip diameter.")
    private String tip;

    @Option(names = "--root", paramLabel = "MM", description = "The root diameter.")
    private String root;

    @Option(
            names = "--span",
            paramLabel = "\"K MM\"",
            description = "The span over K teeth: \"5 34.72\". May be given again for another number of teeth.")
    private List<String> spans = new ArrayList<>();

    @Option(
            names = "--pins",
            paramLabel = "\"PIN MM\"",
            description = "The measure over pins, and how thick they are: \"4.5 88.12\".")
    private String pins;

    @Option(names = "--helix", paramLabel = "DEG", description = "The angle of the teeth by rolling; 0 for straight.")
    private String helix;

    @Option(
            names = "--centre",
            paramLabel = "\"TEETH MM\"",
            description = "The centre distance to a gear of so many teeth: \"37 96\".")
    private String centre;

    @Option(names = "--spline", paramLabel = "DESIGNATION", description = "A spline by its designation.")
    private String spline;

    @Option(names = "--hub", paramLabel = "DESIGNATION", description = "The hub that the spline is to enter.")
    private String hub;

    @Option(names = "--inch", description = "Show lengths in inches, torques in lb·ft and speeds in mph.")
    private boolean inch;

    @Override
    public Integer call() {
        BenchAnswer answer = BenchDesk.identify(new BenchRequest(
                Optional.ofNullable(form),
                Optional.ofNullable(teeth),
                Optional.ofNullable(tip),
                Optional.ofNullable(root),
                spans,
                Optional.ofNullable(pins),
                Optional.ofNullable(helix),
                Optional.ofNullable(centre),
                Optional.ofNullable(spline),
                Optional.ofNullable(hub)));
        if (wantsJson()) {
            write(IdentifyJson.of(answer));
        } else {
            write(units().words(text(answer)));
        }
        return 0;
    }

    private static String text(BenchAnswer answer) {
        TextPage page = new TextPage();
        answer.gear().ifPresent(gear -> gear(gear, page));
        answer.splines().forEach(each -> page.list(each.designation() + ":", BenchWording.of(each)));
        answer.entry().ifPresent(entry -> entry(entry, page));
        return page.toString();
    }

    private static void gear(Telling<Identification> gear, TextPage page) {
        BenchWording.says(gear).forEach(page::paragraph);
        List<Candidate> candidates =
                gear.value().map(Identification::candidates).orElse(List.of());
        candidates.stream().limit(MOST).forEach(candidate -> {
            page.list(
                    BenchWording.of(candidate),
                    candidate.residuals().stream().map(BenchWording::of).toList());
            candidate.remarks().forEach(remark -> page.item("  ", "- ", remark));
        });
        if (candidates.size() > MOST) {
            page.paragraph("%d more; --json lists them all.".formatted(candidates.size() - MOST));
        }
    }

    private static void entry(SplineEntry entry, TextPage page) {
        page.list(
                BenchWording.of(entry),
                entry.comparisons().stream()
                        .map(each -> "%s: %s in the shaft, %s in the hub. %s"
                                .formatted(each.what(), each.ofShaft(), each.ofHub(), each.why()))
                        .toList());
    }

    private Units units() {
        return inch ? Units.INCH : Units.METRIC;
    }
}
