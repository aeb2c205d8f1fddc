package org.layshaft.web.cli;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.swap.SetOffer;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.FitWording;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.desk.Units;
import org.layshaft.web.desk.WishAnswer;
import org.layshaft.web.desk.WishDesk;
import org.layshaft.web.desk.WishLine;
import org.layshaft.web.desk.WishLines;
import org.layshaft.web.desk.WishRequest;
import org.layshaft.web.desk.WishWording;
import org.layshaft.web.json.WishJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says which teeth, sets, axle ratios or speed gears meet a wish. */
@Command(
        name = "wish",
        description =
                "Say what meets a wish: which teeth, at the shafts that there are, and which sets of the catalogue bring a"
                        + " gear where it is wished; which axle ratio; which driven speed gear keeps the reading right.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft wish curlew-early nearer --gear 3 --other 2",
            "  layshaft wish curlew-early longer --gear 1 --value 10 --within 3",
            "  layshaft wish plover rpm-lower --gear 4 --value 300 --at 90",
            "  layshaft wish curlew axle --value 2500 --at 90",
            "  layshaft wish curlew-early reading --axle 3.9"
        })
final class WishCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "BOX", description = "The id of a layout or of a build.")
    private String box;

    @Parameters(
            index = "1",
            paramLabel = "WISH",
            description = "nearer, step, ratio, longer, shorter, rpm, rpm-lower, rpm-higher, axle or reading.")
    private String kind;

    @Option(names = "--serial", paramLabel = "N", description = "The serial number of the box.")
    private String serial;

    @Option(
            names = "--gear",
            paramLabel = "GEAR",
            description = "The gear that is to change; for engine speeds, the highest where none is given.")
    private String gear;

    @Option(names = "--other", paramLabel = "GEAR", description = "The gear that it is to be nearer, or stepped, to.")
    private String other;

    @Option(names = "--value", paramLabel = "N", description = "The ratio, the step, the per cent or the rpm.")
    private String value;

    @Option(names = "--at", paramLabel = "KMH", description = "The road speed in km/h.")
    private String at;

    @Option(
            names = "--within",
            paramLabel = "PERCENT",
            description = "By how much of the ratio the wish may be missed. Default: 2.")
    private String within;

    @Option(
            names = "--centre",
            paramLabel = "MM",
            description = "The centre distance, where the catalogue does not tell it.")
    private String centre;

    @Option(names = "--axle", paramLabel = "RATIO", description = "The axle ratio that goes in, for the reading.")
    private String axle;

    @Option(names = "--tyre", paramLabel = "CODE", description = "The tyre that goes on: \"205/55 R16\".")
    private String tyre;

    @Option(names = "--was-tyre", paramLabel = "CODE", description = "The tyre before, if not that of the layout.")
    private String wasTyre;

    @Option(names = "--inch", description = "Show lengths in inches, torques in lb·ft and speeds in mph.")
    private boolean inch;

    @Override
    public Integer call() {
        WishAnswer answer = new WishDesk(new PartsDesk(knowledgeToReasonWith()))
                .wish(new WishRequest(
                        Optional.of(box),
                        Optional.ofNullable(serial),
                        Optional.of(kind),
                        Optional.ofNullable(gear),
                        Optional.ofNullable(value),
                        Optional.ofNullable(other),
                        Optional.ofNullable(at),
                        Optional.ofNullable(within),
                        Optional.ofNullable(centre),
                        Optional.ofNullable(axle),
                        Optional.ofNullable(tyre),
                        Optional.ofNullable(wasTyre)));
        if (wantsJson()) {
            write(WishJson.of(answer));
        } else {
            write(units().words(text(answer)));
        }
        return 0;
    }

    private String text(WishAnswer answer) {
        TextPage page = new TextPage().paragraph(answer.asked() + ".");
        WishWording.says(answer).forEach(page::paragraph);
        answer.gear().ifPresent(wish -> gear(answer, wish, page));
        answer.axle().ifPresent(wish -> axle(wish, page));
        answer.reading().ifPresent(wish -> reading(wish, page));
        return page.toString();
    }

    private void gear(WishAnswer answer, WishAnswer.OfGear wish, TextPage page) {
        TextTable table = new TextTable(
                "",
                "teeth",
                "module",
                "helix",
                "centre",
                "shifts",
                "ratio",
                "exactly",
                "misses by",
                "step below",
                "above");
        List<WishLine> lines = WishLines.of(answer.layout(), wish, WishLines.MOST, units());
        lines.forEach(line -> table.row(List.of(
                line.what(),
                line.teeth(),
                line.moduleMm(),
                line.helixDeg(),
                line.centre(),
                line.shiftSum(),
                line.ratio(),
                line.exact(),
                line.misses(),
                line.below(),
                line.above())));
        page.block(table.toString());
        if (wish.proposals().value().isPresent()) {
            page.paragraph(WishWording.rules(wish.rules()));
        }
        List<SetOffer> offers = wish.sets().value().map(sets -> sets.offers()).orElse(List.of());
        if (!offers.isEmpty()) {
            TextTable sets = new TextTable("set", "ratio", "misses by", "verdict", "places");
            long serving = offers.stream().filter(SetOffer::serves).count();
            offers.stream()
                    .limit(serving + WishWording.MOST_OTHERS)
                    .forEach(offer -> sets.row(List.of(
                            FitWording.of(offer.serving().placement().set()),
                            Decimals.three(offer.ratio()),
                            WishWording.misses(wish, offer.ratio()),
                            offer.serving().verdict().spoken(),
                            FitWording.places(
                                    offer.serving().placement(),
                                    offer.serving().box().fitted()))));
            page.block(sets.toString());
        }
    }

    private static void axle(WishAnswer.OfAxle wish, TextPage page) {
        wish.choices()
                .value()
                .ifPresent(choices -> page.list(
                        "Axle ratios that there are:",
                        choices.stream()
                                .map(choice -> "%s: %s (%s)"
                                        .formatted(
                                                Decimals.three(choice.choice().ratio()),
                                                WishWording.rpm(choice),
                                                WishWording.sets(choice)))
                                .toList()));
    }

    private static void reading(WishAnswer.OfReading wish, TextPage page) {
        wish.choices()
                .value()
                .ifPresent(choices -> page.list(
                        "Driven speed gears that there are:",
                        choices.stream()
                                .map(choice -> "%d teeth: %s. %s: %s"
                                        .formatted(
                                                choice.choice().teeth(),
                                                WishWording.reads(choice),
                                                FitWording.of(choice.serving()
                                                        .placement()
                                                        .set()),
                                                FitWording.verdict(choice.serving())))
                                .toList()));
    }

    private Units units() {
        return inch ? Units.INCH : Units.METRIC;
    }
}
