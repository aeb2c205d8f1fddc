package org.layshaft.web.cli;

import java.util.List;
import java.util.Optional;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.desk.SwapAnswer;
import org.layshaft.web.desk.SwapDesk;
import org.layshaft.web.desk.SwapLine;
import org.layshaft.web.desk.SwapLines;
import org.layshaft.web.desk.SwapRequest;
import org.layshaft.web.desk.SwapWording;
import org.layshaft.web.desk.Units;
import org.layshaft.web.json.SwapJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what another set, tyre, axle or speedometer gear does, beside how it was. */
@Command(
        name = "swap",
        description =
                "Say what another set, tyre, axle ratio or speedometer gear does to a box and its vehicle, beside how"
                        + " it was.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft swap curlew --tyre \"205/55 R16\" --cruise 100",
            "  layshaft swap curlew-early --set SM-1154 --place third --cruise 100 --torque 150",
            "  layshaft swap curlew --axle 3.7 --drive \"8/17 8/18\" --json"
        })
final class SwapCommand extends Subcommand {
    @Parameters(paramLabel = "BOX", description = "The id of a layout or of a build.")
    private String box;

    @Option(names = "--serial", paramLabel = "N", description = "The serial number of the box.")
    private String serial;

    @Option(names = "--set", paramLabel = "SET", description = "The number of a set or part to put in.")
    private String set;

    @Option(names = "--place", paramLabel = "PLACE", description = "Where it goes; otherwise where it serves best.")
    private String place;

    @Option(names = "--tyre", paramLabel = "CODE", description = "Other tyres: \"205/55 R16\".")
    private String tyre;

    @Option(names = "--was-tyre", paramLabel = "CODE", description = "The tyres before, if not those of the layout.")
    private String wasTyre;

    @Option(names = "--axle", paramLabel = "RATIO", description = "Another axle ratio.")
    private String axle;

    @Option(
            names = "--drive",
            paramLabel = "TEETH",
            description = "Speedometer gears before and after, driving/driven: \"8/17 8/18\".")
    private String drive;

    @Option(names = "--cruise", paramLabel = "KMH", description = "A road speed to tell engine speeds at, in km/h.")
    private String cruise;

    @Option(names = "--shift", paramLabel = "RPM", description = "The engine speed at which one shifts up.")
    private String shift;

    @Option(names = "--torque", paramLabel = "NM", description = "The torque on the input, in N·m.")
    private String torque;

    @Option(names = "--inch", description = "Show lengths in inches, torques in lb·ft and speeds in mph.")
    private boolean inch;

    @Override
    public Integer call() {
        SwapAnswer answer = new SwapDesk(new PartsDesk(knowledgeToReasonWith()))
                .swap(new SwapRequest(
                        Optional.of(box),
                        Optional.ofNullable(serial),
                        Optional.ofNullable(set),
                        Optional.ofNullable(place),
                        Optional.ofNullable(tyre),
                        Optional.ofNullable(wasTyre),
                        Optional.ofNullable(axle),
                        Optional.ofNullable(drive),
                        Optional.ofNullable(cruise),
                        Optional.ofNullable(shift),
                        Optional.ofNullable(torque)));
        if (wantsJson()) {
            write(SwapJson.of(answer));
        } else {
            write(units().words(text(answer)));
        }
        return 0;
    }

    private String text(SwapAnswer answer) {
        TextPage page = new TextPage().paragraph(SwapWording.asked(answer) + ".");
        SwapWording.says(answer).forEach(page::paragraph);
        List<SwapLine> lines = SwapLines.of(answer.comparison(), units());
        TextTable table = new TextTable("gear", "", "before", "after", "");
        lines.forEach(line -> table.row(
                List.of(line.gear(), line.what(), line.before(), line.after(), line.isChanged() ? "changed" : "")));
        page.block(table.toString());
        return page.list("What cannot be told, because:", SwapWording.untold(lines))
                .toString();
    }

    private Units units() {
        return inch ? Units.INCH : Units.METRIC;
    }
}
