package org.layshaft.web.cli;

import java.util.Optional;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.Listened;
import org.layshaft.web.desk.SoundDesk;
import org.layshaft.web.desk.SoundRequest;
import org.layshaft.web.json.SoundJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says at which frequencies a layout sounds, and what a measured one may be. */
@Command(
        name = "sound",
        description =
                "Say at which frequencies a layout sounds in a gear, and which of them fit one that was measured.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft sound curlew --gear 3 --rpm 2400",
            "  layshaft sound curlew --gear 3 --rpm 2400 --hz 756 --within 2%%",
            "  layshaft sound curlew --gear 4 --kmh 60 --hz 840 --within \"5 Hz\"",
            "  layshaft sound plover --gear N --json"
        })
final class SoundCommand extends Subcommand {
    @Parameters(paramLabel = "LAYOUT", description = "The id of a layout; \"layshaft layouts\" lists them.")
    private String layout;

    @Option(
            names = "--gear",
            paramLabel = "GEAR",
            description = "The gear, by the name that \"layshaft gears\" gives it; N for neutral.")
    private String gear;

    @Option(names = "--rpm", paramLabel = "RPM", description = "Turns of the engine, and so of the input, a minute.")
    private String rpm;

    @Option(
            names = "--kmh",
            paramLabel = "SPEED",
            description = "The road speed in km/h, instead of --rpm; in neutral beside it.")
    private String kmh;

    @Option(names = "--mph", paramLabel = "SPEED", description = "The same in mph.")
    private String mph;

    @Option(names = "--hz", paramLabel = "HZ", description = "The frequency that was measured.")
    private String hz;

    @Option(
            names = "--within",
            paramLabel = "TOLERANCE",
            description = "How far from it something may lie and still fit: 2%%, or \"5 Hz\". Default: 2%%.")
    private String within;

    @Option(names = "--harmonics", paramLabel = "N", description = "The highest multiple to look at. Default: 4.")
    private String harmonics;

    @Option(
            names = "--sidebands",
            paramLabel = "N",
            description = "How many sidebands to look at, to either side. Default: 2.")
    private String sidebands;

    @Override
    public Integer call() {
        KnowledgeBase knowledge = knowledgeToReasonWith();
        Listened listened = new SoundDesk(Desk.over(knowledge)).listen(request());
        if (wantsJson()) {
            write(SoundJson.of(listened));
        } else {
            write(SoundText.of(listened));
        }
        return 0;
    }

    private SoundRequest request() {
        return new SoundRequest(
                Optional.of(layout),
                Optional.ofNullable(gear),
                Optional.ofNullable(rpm),
                Optional.ofNullable(kmh),
                Optional.ofNullable(mph),
                Optional.ofNullable(hz),
                Optional.ofNullable(within),
                Optional.ofNullable(harmonics),
                Optional.ofNullable(sidebands));
    }
}
