package org.layshaft.web.cli;

import java.util.Optional;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.desk.LayoutFinder;
import org.layshaft.web.desk.RoadAnswer;
import org.layshaft.web.desk.RoadDesk;
import org.layshaft.web.desk.RoadRequest;
import org.layshaft.web.json.RoadJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what every gear of a layout comes to on the road. */
@Command(
        name = "road",
        description = "Say what every gear of a layout comes to on the road, in the vehicle that is stated.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft road plover --tyre \"175/65 R14\" --at 80",
            "  layshaft road curlew --axle 4.1 --tyre \"195/75 R16\" --at 50 --mph"
        })
final class RoadCommand extends Subcommand {
    @Parameters(paramLabel = "LAYOUT", description = "The id of a layout; \"layshaft layouts\" lists them.")
    private String layout;

    @Option(names = "--tyre", paramLabel = "CODE", description = "Another tyre on the driven wheels: \"205/55 R16\".")
    private String tyre;

    @Option(names = "--rolls", paramLabel = "MM", description = "How far a driven wheel rolls in one turn, in mm.")
    private String rolls;

    @Option(
            names = "--axle",
            paramLabel = "RATIO",
            description = "Another axle ratio: turns of the box's output for one turn of the wheels.")
    private String axle;

    @Option(names = "--mass", paramLabel = "KG", description = "Mass of the vehicle: 1450, or \"3200 lb\".")
    private String mass;

    @Option(names = "--efficiency", paramLabel = "PART", description = "From engine to wheels, 0 to 1.")
    private String efficiency;

    @Option(names = "--rolling", paramLabel = "COEFFICIENT", description = "Rolling resistance over weight: 0.013.")
    private String rolling;

    @Option(names = "--drag", paramLabel = "M2", description = "Drag coefficient times frontal area, in m².")
    private String drag;

    @Option(names = "--air", paramLabel = "DENSITY", description = "Density of the air, in kg/m³.")
    private String air;

    @Option(
            names = "--engine",
            paramLabel = "POINTS",
            description =
                    "Full-load torque by engine speed: \"1000 150, 2600 240\" in rpm and N·m; \"lb ft\" at the end"
                            + " for lb·ft.")
    private String engine;

    @Option(names = "--revs", paramLabel = "RANGE", description = "What the engine is used between, in rpm: 900-4000.")
    private String revs;

    @Option(
            names = "--at",
            paramLabel = "SPEED",
            description = "A road speed to tell engine speeds at, in km/h; in mph with --mph.")
    private String at;

    @Option(names = "--mph", description = "Speeds in miles an hour.")
    private boolean mph;

    @Override
    public Integer call() {
        KnowledgeBase knowledge = knowledgeToReasonWith();
        Reasoner reasoner = Reasoners.standard(knowledge);
        RoadAnswer answer =
                new RoadDesk(reasoner::box, id -> LayoutFinder.find(knowledge, id.orElseThrow())).drive(request());
        if (wantsJson()) {
            write(RoadJson.of(answer));
        } else {
            write(RoadText.of(answer));
        }
        return 0;
    }

    private RoadRequest request() {
        return new RoadRequest(
                Optional.of(layout),
                Optional.ofNullable(tyre),
                Optional.ofNullable(rolls),
                Optional.ofNullable(axle),
                Optional.ofNullable(mass),
                Optional.ofNullable(efficiency),
                Optional.ofNullable(rolling),
                Optional.ofNullable(drag),
                Optional.ofNullable(air),
                Optional.ofNullable(engine),
                Optional.ofNullable(revs),
                Optional.ofNullable(at),
                Optional.of(mph ? "us" : "metric"));
    }
}
