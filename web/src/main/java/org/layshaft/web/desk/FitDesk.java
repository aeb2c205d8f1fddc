package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MISSING;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.engine.fit.Judgement;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.fit.Placement;
import org.layshaft.engine.fit.Serving;
import org.layshaft.kb.catalogue.PartSet;

/** Says where what is asked for serves. Thread-safe. */
public final class FitDesk {
    /** With so many further units is tried what is only told in brief; each more takes far longer. */
    static final int BRIEFLY = 1;

    /** So many places of one set in chosen boxes are tried with as many further units as ever. */
    private static final int MOST_THOROUGH = 60;

    /** So many of those are given with every check. */
    private static final int MOST_IN_FULL = 3;

    /** Among equals, where its own parts stand already. */
    private static final Comparator<Serving> BEST_FIRST = Comparator.comparing(Serving::verdict)
            .thenComparing(serving -> serving.failing().count())
            .thenComparing(serving ->
                    serving.judgements().stream().filter(Judgement::isUntold).count())
            .thenComparing(serving -> -atHome(serving));

    private final PartsDesk parts;

    public FitDesk(PartsDesk parts) {
        this.parts = parts;
    }

    /** Throws {@link BadInputException} with everything that cannot be used. */
    public FitAnswer fit(FitRequest request) {
        WrittenNumbers written = new WrittenNumbers();
        if (request.set().isEmpty() && request.box().isEmpty()) {
            written.add(new BadInputException(
                    MISSING, "Neither a set nor a box is given. Give the number of a set, the id of a box, or both."));
        }
        Optional<PartSet> set = request.set().flatMap(number -> written.unlessRefused(() -> parts.set(number)));
        Optional<Integer> serial = written.serial(request.serial());
        if (serial.isPresent() && request.box().isEmpty()) {
            written.add(
                    new BadInputException(MISSING, "A serial number says nothing without its box. Give the box too."));
        }
        Optional<List<BuiltBox>> boxes = written.unlessRefused(() -> boxes(request, serial));
        Optional<String> place = boxes.flatMap(in ->
                request.place().flatMap(name -> written.unlessRefused(() -> BuiltBoxes.place(name, in))));
        written.refuse();
        return answer(set, boxes.orElseThrow(), request.box().isEmpty(), serial, place);
    }

    private List<BuiltBox> boxes(FitRequest request, Optional<Integer> serial) {
        BuiltBoxes known = parts.boxes();
        return request.box().map(name -> known.called(name, serial)).orElseGet(known::all);
    }

    private FitAnswer answer(
            Optional<PartSet> set,
            List<BuiltBox> boxes,
            boolean everyBox,
            Optional<Integer> serial,
            Optional<String> place) {
        PartsCounter counter = parts.counter();
        List<PartSet> sets = set.map(List::of).orElseGet(() -> parts.orderable(place.isPresent()));
        List<Serving> brief = boxes.parallelStream()
                .flatMap(box -> sets.stream()
                        .flatMap(each -> counter.placements(each, box).stream())
                        .filter(placement -> isAt(placement, place))
                        .map(placement -> counter.serve(placement, box, BRIEFLY)))
                .sorted(BEST_FIRST)
                .toList();
        int thorough = set.isPresent() && !everyBox ? Math.min(MOST_THOROUGH, brief.size()) : 0;
        List<Serving> servings = Stream.concat(
                        brief.stream()
                                .limit(thorough)
                                .parallel()
                                .map(this::thoroughly)
                                .sorted(BEST_FIRST),
                        brief.stream().skip(thorough))
                .toList();
        int inFull = Math.min(MOST_IN_FULL, thorough);
        FitAnswer answer = new FitAnswer(set, boxes, everyBox, serial, place, servings, inFull, List.of());
        return answer.with(new Supplying(counter).of(answer));
    }

    private Serving thoroughly(Serving brief) {
        return brief.verdict() == FitVerdict.DOES_NOT_FIT
                ? parts.counter().serve(brief.placement(), brief.box())
                : brief;
    }

    private static long atHome(Serving serving) {
        Map<String, String> fitted = serving.box().build().fitted();
        return serving.placement().parts().entrySet().stream()
                .filter(entry -> entry.getValue().number().equals(fitted.get(entry.getKey())))
                .count();
    }

    private static boolean isAt(Placement placement, Optional<String> place) {
        return place.isEmpty() || placement.parts().containsKey(place.get());
    }
}
