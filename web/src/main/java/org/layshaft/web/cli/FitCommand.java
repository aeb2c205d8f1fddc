package org.layshaft.web.cli;

import java.util.Optional;
import org.layshaft.web.desk.FitAnswer;
import org.layshaft.web.desk.FitDesk;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.desk.Units;
import org.layshaft.web.json.FitJson;
import org.layshaft.web.json.PartsJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says whether a set serves in a box, what it needs, and what fits where; without either, lists the catalogue. */
@Command(
        name = "fit",
        description =
                "Say whether a set or part serves in a box: at every place where it could stand, with every check,"
                        + " what must come along, and what is supplied today. Without a set, say what fits the box."
                        + " With neither, list sets and boxes.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft fit --find \"third pair\"",
            "  layshaft fit SM-1152 --box curlew",
            "  layshaft fit SM-1152 --box curlew --serial 5120 --place third",
            "  layshaft fit SM-1152",
            "  layshaft fit --box curlew --place third"
        })
final class FitCommand extends Subcommand {
    @Parameters(arity = "0..1", paramLabel = "SET", description = "The number or the name of a set or a part.")
    private String set;

    @Option(
            names = "--box",
            paramLabel = "BOX",
            description = "The id of a layout, for all that were built of it, or of a build. Otherwise all boxes.")
    private String box;

    @Option(names = "--serial", paramLabel = "N", description = "The serial number of the box.")
    private String serial;

    @Option(
            names = "--place",
            paramLabel = "PLACE",
            description = "The place in the box, by the part that stands there: third, 3-4-hub.")
    private String place;

    @Option(
            names = "--find",
            paramLabel = "WORDS",
            description = "List the sets and parts whose number or name holds these words.")
    private String find;

    @Option(names = "--inch", description = "Show lengths in inches, torques in lb·ft and speeds in mph.")
    private boolean inch;

    @Override
    public Integer call() {
        PartsDesk parts = new PartsDesk(knowledge());
        if (find != null || set == null && box == null && serial == null && place == null) {
            list(parts, find == null ? "" : find);
            return 0;
        }
        FitAnswer answer = new FitDesk(parts)
                .fit(new FitRequest(
                        Optional.ofNullable(set),
                        Optional.ofNullable(box),
                        Optional.ofNullable(serial),
                        Optional.ofNullable(place)));
        if (wantsJson()) {
            write(FitJson.of(answer, parts.catalogue()));
        } else {
            write(units().words(FitText.of(answer, parts.catalogue())));
        }
        return 0;
    }

    private void list(PartsDesk parts, String words) {
        if (wantsJson()) {
            write(PartsJson.of(parts, words));
        } else {
            write(PartsText.of(parts, words));
        }
    }

    private Units units() {
        return inch ? Units.INCH : Units.METRIC;
    }
}
