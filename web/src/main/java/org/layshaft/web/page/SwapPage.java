package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.words.Names;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.Cautions;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.SwapAnswer;
import org.layshaft.web.desk.SwapDesk;
import org.layshaft.web.desk.SwapLine;
import org.layshaft.web.desk.SwapLines;
import org.layshaft.web.desk.SwapRequest;
import org.layshaft.web.desk.SwapWording;
import org.layshaft.web.desk.Units;
import org.layshaft.web.page.SwapView.GearView;
import org.layshaft.web.page.SwapView.SwapFormView;

/** The page of what another set, tyre, axle ratio or speedometer gear does. Thread-safe. */
public final class SwapPage {
    private final BoxChoices boxes;
    private final SwapDesk swaps;
    private final Templates templates;

    SwapPage(Desk desk, Templates templates) {
        this.boxes = new BoxChoices(desk);
        this.swaps = desk.swaps();
        this.templates = templates;
    }

    /** The page; what cannot be used is said on it, above the form to put it right in. */
    public Answered answer(SwapRequest request, Units units) {
        if (request.box().isEmpty()) {
            return Answered.with(fill(request, units, List.of(), Optional.empty()));
        }
        try {
            return Answered.with(fill(request, units, List.of(), Optional.of(swaps.swap(request))));
        } catch (BadInputException problem) {
            List<String> trouble = problem.getMessage().lines().toList();
            return new Answered(Optional.of(problem), fill(request, units, trouble, Optional.empty()));
        }
    }

    private String fill(SwapRequest request, Units units, List<String> trouble, Optional<SwapAnswer> answer) {
        List<SwapLine> lines =
                answer.map(each -> SwapLines.of(each.comparison(), units)).orElse(List.of());
        return templates.fill(
                "swap",
                new SwapView(
                        boxes.all(request.box()),
                        form(request),
                        trouble,
                        answer.map(SwapWording::asked).orElse(null),
                        answer.map(SwapWording::says).orElse(List.of()),
                        answer.flatMap(SwapAnswer::serving)
                                .map(ServingView::brief)
                                .orElse(null),
                        gears(lines),
                        SwapWording.untold(lines),
                        Cautions.ofParts(),
                        "/api/swap" + SwapAddress.query(request)),
                units,
                SwapAddress.link(request));
    }

    private static SwapFormView form(SwapRequest request) {
        return new SwapFormView(
                request.serial().orElse(""),
                request.set().orElse(""),
                request.place().orElse(""),
                request.tyre().orElse(""),
                request.wasTyre().orElse(""),
                request.axle().orElse(""),
                request.drive().orElse(""),
                request.cruise().orElse(""),
                request.shift().orElse(""),
                request.torque().orElse(""));
    }

    private static List<GearView> gears(List<SwapLine> lines) {
        Map<String, List<SwapLine>> byGear = new LinkedHashMap<>();
        lines.forEach(line ->
                byGear.computeIfAbsent(line.gear(), none -> new ArrayList<>()).add(line));
        return byGear.entrySet().stream()
                .map(entry -> new GearView(
                        entry.getKey().isEmpty() ? "Pairs that are changed" : Names.gearName(entry.getKey()),
                        entry.getValue()))
                .toList();
    }
}
