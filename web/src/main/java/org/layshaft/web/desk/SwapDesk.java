package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.MISSING;
import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.Change;
import org.layshaft.engine.swap.Comparison;
import org.layshaft.engine.swap.ContactRatios;
import org.layshaft.engine.swap.FittedContacts;
import org.layshaft.engine.swap.FittedGears;
import org.layshaft.engine.swap.OtherTyre;
import org.layshaft.engine.swap.Running;
import org.layshaft.engine.swap.SpeedDrive;
import org.layshaft.engine.swap.SpeedGears;
import org.layshaft.engine.teeth.InputTorque;
import org.layshaft.engine.teeth.Turn;
import org.layshaft.kb.layout.Layout;

/** Says what a change does, beside how it was. Thread-safe. */
public final class SwapDesk {
    private static final Pattern DRIVES = Pattern.compile("(\\d{1,3})/(\\d{1,3}) +(\\d{1,3})/(\\d{1,3})");

    private final PartsDesk parts;

    public SwapDesk(PartsDesk parts) {
        this.parts = parts;
    }

    /** Throws {@link BadInputException} with everything that cannot be used. */
    public SwapAnswer swap(SwapRequest request) {
        WrittenNumbers written = new WrittenNumbers();
        if (request.box().isEmpty()) {
            written.add(new BadInputException(MISSING, "The box is missing. Give the id of a layout: curlew"));
        }
        Optional<Running> running = written.unlessRefused(() -> running(request, written));
        Optional<Fraction> axle = written.positive("axle ratio", request.axle(), "4.1");
        Optional<Optional<SpeedDrive>> drive = written.unlessRefused(() -> drive(request));
        Optional<Before> before = request.box().flatMap(box -> written.unlessRefused(() -> before(box, request)));
        written.refuse();
        return answer(request, before.orElseThrow(), axle, drive.orElseThrow(), running.orElseThrow());
    }

    /** What there was, and the set that was put in. */
    private record Before(Layout layout, Optional<Serving> serving) {}

    private Before before(String box, SwapRequest request) {
        if (request.set().isPresent()) {
            FitAnswer fit = new FitDesk(parts)
                    .fit(new FitRequest(request.set(), request.box(), request.serial(), request.place()));
            Serving best = fit.servings().stream()
                    .findFirst()
                    .orElseThrow(() -> new BadInputException(
                            UNFIT, "%s: there is nowhere that it could stand.".formatted(FitSaid.asked(fit))));
            return new Before(onTyre(FittedGears.layout(best.box().fitted()), request), Optional.of(best));
        }
        Optional<Layout> layout = parts.layout(box);
        if (layout.isPresent() && request.serial().isEmpty()) {
            return new Before(onTyre(layout.get(), request), Optional.empty());
        }
        WrittenNumbers number = new WrittenNumbers();
        Optional<Integer> serial = number.serial(request.serial());
        number.refuse();
        BuiltBox built = parts.boxes().called(box, serial).get(0);
        return new Before(onTyre(FittedGears.layout(built.fitted()), request), Optional.empty());
    }

    /** On the tyre that was there before, where another than the layout's is meant. */
    private static Layout onTyre(Layout layout, SwapRequest request) {
        return request.wasTyre()
                .map(code -> Change.NONE.with(new OtherTyre.OfSize(code)).applyTo(layout))
                .orElse(layout);
    }

    private SwapAnswer answer(
            SwapRequest request, Before before, Optional<Fraction> axle, Optional<SpeedDrive> drive, Running running) {
        List<String> what = new ArrayList<>();
        Change change = before.serving().map(SwapDesk::change).orElse(Change.NONE);
        before.serving().ifPresent(serving -> what.add(put(serving)));
        if (request.tyre().isPresent()) {
            change = change.with(new OtherTyre.OfSize(request.tyre().get()));
            what.add("tyres of %s".formatted(request.tyre().get()));
        }
        if (axle.isPresent()) {
            change = change.withAxleRatio(new BigDecimal(request.axle().get().strip()));
            what.add("an axle ratio of %s".formatted(request.axle().get().strip()));
        }
        if (drive.isPresent()) {
            change = change.with(drive.get());
            what.add("speedometer gears %d/%d instead of %d/%d"
                    .formatted(
                            drive.get().after().drivingTeeth(),
                            drive.get().after().drivenTeeth(),
                            drive.get().before().drivingTeeth(),
                            drive.get().before().drivenTeeth()));
        }
        Change whole = change;
        WrittenNumbers possible = new WrittenNumbers();
        Optional<Comparison> comparison = possible.unlessRefused(
                () -> Comparison.of(before.layout(), whole, running, parts.passingReasoner(), contacts(before)));
        possible.refuse();
        return new SwapAnswer(what, before.serving(), comparison.orElseThrow());
    }

    /** From the parts, where a set is put in. */
    private ContactRatios contacts(Before before) {
        return before.serving()
                .<ContactRatios>map(serving -> new FittedContacts(
                        parts.counter(), before.layout(), serving.box().fitted(), serving.fittedThen()))
                .orElse(ContactRatios.FROM_LAYOUT_ALONE);
    }

    private static String put(Serving serving) {
        String with = serving.companions().isEmpty()
                ? ""
                : " with " + FitWording.of(serving.companions().get(0));
        return "%s at %s%s"
                .formatted(
                        FitWording.of(serving.placement().set()),
                        FitWording.places(serving.placement(), serving.box().fitted()),
                        with);
    }

    private static Change change(Serving serving) {
        Telling<Change> change = FittedGears.change(serving.box().fitted(), serving.fittedThen());
        return change.value()
                .orElseThrow(() -> new BadInputException(
                        UNFIT, "What it changes cannot be told: %s.".formatted(String.join("; ", change.because()))));
    }

    private static Running running(SwapRequest request, WrittenNumbers written) {
        Optional<Fraction> torque = written.positive("torque", request.torque(), "150");
        return new Running(
                written.positive("cruising speed", request.cruise(), "100"),
                written.positive("engine speed to shift at", request.shift(), "3500"),
                torque.map(nm -> new InputTorque(nm, Turn.CLOCKWISE)));
    }

    private static Optional<SpeedDrive> drive(SwapRequest request) {
        return request.drive().map(text -> {
            Matcher teeth = DRIVES.matcher(text.strip());
            if (!teeth.matches()) {
                throw new BadInputException(
                        MALFORMED,
                        "The speedometer gears \"%s\" cannot be read. Write driving/driven before and after: 8/17 8/18"
                                .formatted(text));
            }
            return new SpeedDrive(gears(teeth, 1), gears(teeth, 3));
        });
    }

    private static SpeedGears gears(Matcher teeth, int from) {
        return new SpeedGears(Integer.parseInt(teeth.group(from)), Integer.parseInt(teeth.group(from + 1)));
    }
}
