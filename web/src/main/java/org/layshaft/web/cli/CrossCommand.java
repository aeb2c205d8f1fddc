package org.layshaft.web.cli;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.web.desk.CrossChoice;
import org.layshaft.web.desk.CrossCsv;
import org.layshaft.web.desk.CrossDesk;
import org.layshaft.web.desk.CrossRequest;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.json.CrossJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Holds every set against every box. */
@Command(
        name = "cross",
        description = "Hold every set of the catalogue against every box. How far it is goes to the error stream.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  layshaft cross --box curlew",
            "  layshaft cross --companions --csv > cross.csv",
            "  layshaft cross --shape pair --verdict fits --json"
        })
final class CrossCommand extends Subcommand {
    @Option(
            names = "--companions",
            description =
                    "Try what does not fit as it is with one further unit; that takes far longer. \"layshaft fit\" tries up to three.")
    private boolean companions;

    @Option(names = "--box", paramLabel = "BOX", description = "Only this layout or build.")
    private String box;

    @Option(names = "--shape", paramLabel = "SHAPE", description = "Only sets of this shape: pair, synchroniser.")
    private String shape;

    @Option(
            names = "--verdict",
            paramLabel = "VERDICT",
            description = "Only sets that come out so somewhere: fits, fits-with, cannot-be-told, does-not-fit.")
    private String verdict;

    @Option(names = "--csv", description = "Answer in CSV.")
    private boolean csv;

    @Override
    public Integer call() {
        CrossDesk desk = new PartsDesk(knowledge()).cross();
        CrossChoice choice = desk.choice(new CrossRequest(
                Optional.ofNullable(box), Optional.ofNullable(shape), Optional.ofNullable(verdict), companions));
        CrossTable table = choice.of(desk.make(companions, progress(desk.size())));
        if (wantsJson()) {
            write(CrossJson.of(table, companions));
        } else if (csv) {
            write(CrossCsv.of(table));
        } else {
            write(CrossText.of(table, companions));
        }
        return 0;
    }

    /** One line that is written over, at every hundredth; the threads that tell may overtake each other. */
    private IntConsumer progress(int all) {
        int step = Math.max(1, all / 100);
        AtomicInteger told = new AtomicInteger();
        return done -> {
            if (told.accumulateAndGet(done, Math::max) == done && (done % step == 0 || done == all)) {
                err().print("\r%d of %d sets".formatted(done, all) + (done == all ? System.lineSeparator() : ""));
                err().flush();
            }
        };
    }
}
