package org.layshaft.web.cli;

import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;

import java.math.BigDecimal;
import java.util.Optional;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.RoadTable;
import org.layshaft.engine.road.SpeedUnit;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.ImpossibleFactsException;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.LayoutFinder;
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
    private Integer rollsMm;

    @Option(
            names = "--axle",
            paramLabel = "RATIO",
            description = "Another axle ratio: turns of the box's output for one turn of the wheels.")
    private BigDecimal axle;

    @Option(
            names = "--at",
            paramLabel = "SPEED",
            description = "A road speed to tell engine speeds at, in km/h; in mph with --mph.")
    private BigDecimal at;

    @Option(names = "--mph", description = "Speeds in miles an hour.")
    private boolean mph;

    @Override
    public Integer call() {
        KnowledgeBase knowledge = knowledgeToReasonWith();
        Layout chosen = LayoutFinder.find(knowledge, layout);
        Box box = Reasoners.standard(knowledge).box(chosen);
        SpeedUnit unit = mph ? SpeedUnit.MPH : SpeedUnit.KMH;
        try {
            Vehicle stated = Vehicle.of(box, chosen.road().orElse(Road.NOTHING));
            Vehicle vehicle = Vehicle.of(box, asked(chosen.road().orElse(Road.NOTHING)));
            RoadTable table = RoadTable.of(vehicle, speed().map(unit::toKmh));
            Optional<Telling<Fraction>> speedometer = vehicle.equals(stated)
                    ? Optional.empty()
                    : Optional.of(SpeedometerChange.between(stated, vehicle).then(SpeedometerChange::errorPercent));
            if (wantsJson()) {
                write(RoadJson.of(chosen, table, speedometer, unit));
            } else {
                write(RoadText.of(chosen, table, speedometer, unit));
            }
        } catch (ImpossibleFactsException impossible) {
            throw new BadInputException(UNFIT, impossible.getMessage());
        }
        return 0;
    }

    private Road asked(Road stated) {
        Road onTyre = tyre == null ? stated : stated.withTyre(tyre);
        Road rolling = rollsMm == null ? onTyre : onTyre.withRollingCircumference(rollsMm);
        return axle == null ? rolling : rolling.withAxleRatio(axle);
    }

    private Optional<Fraction> speed() {
        if (at != null && at.signum() <= 0) {
            throw new BadInputException(
                    UNFIT, "The road speed is %s. Give one of more than 0.".formatted(at.toPlainString()));
        }
        return Optional.ofNullable(at).map(Fraction::of);
    }
}
