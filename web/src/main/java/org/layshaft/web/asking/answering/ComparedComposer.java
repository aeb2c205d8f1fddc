package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Direction;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.road.Vehicle;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;

/** What sets two boxes apart, gear by gear. */
final class ComparedComposer {
    private final Box one;
    private final Box other;

    ComparedComposer(Box one, Box other) {
        this.one = one;
        this.other = other;
    }

    Composed compose(Question.Compared question) {
        List<String> says = new ArrayList<>();
        List<String> gears = question.gears();
        if (gears.isEmpty()) {
            Stream.of(one, other).map(ComparedComposer::kind).forEach(says::add);
            says.add(spread());
        }
        boolean same = isToWheels(one.layout()) == isToWheels(other.layout());
        List<String> names = gears.isEmpty()
                ? one.gears().stream().map(Box.DerivedGear::name).toList()
                : gears;
        names.forEach(gear -> says.add(gear(gear, same)));
        if (!same) {
            says.add(
                    "The ratios of %s include a final drive and those of %s do not, so only the overall ratios, axle included, can be held against each other."
                            .formatted(
                                    isToWheels(one.layout()) ? name(one) : name(other),
                                    isToWheels(one.layout()) ? name(other) : name(one)));
        }
        return Composed.of(says).about(gears);
    }

    private static String name(Box box) {
        return box.layout().name();
    }

    private static boolean isToWheels(Layout layout) {
        return !layout.finalDrives().isEmpty();
    }

    private static String kind(Box box) {
        Layout layout = box.layout();
        long forward = forward(box).size();
        long ringed = layout.all(BlockingRing.class).count();
        List<String> has = new ArrayList<>();
        has.add("%d forward gear%s".formatted(forward, forward == 1 ? "" : "s"));
        has.add("%d shafts"
                .formatted(
                        layout.all(Shaft.class).filter(shaft -> !shaft.held()).count()));
        has.add(ringed == 0 ? "no blocking rings" : "%d blocking rings".formatted(ringed));
        has.add(
                layout.all(Differential.class).findAny().isPresent()
                        ? "a differential inside"
                        : "no differential inside");
        String summary = layout.summary().isEmpty() ? "" : " (%s)".formatted(layout.summary());
        return "%s%s has %s.".formatted(layout.name(), summary, Names.joined(has));
    }

    private static List<Box.DerivedGear> forward(Box box) {
        return box.gears().stream()
                .filter(gear -> gear.direction() == Direction.FORWARD)
                .toList();
    }

    /** First over top. */
    private String spread() {
        List<String> said = Stream.of(one, other)
                .map(box -> {
                    List<Box.DerivedGear> gears = forward(box);
                    return gears.isEmpty()
                            ? "%s has no forward gear".formatted(name(box))
                            : "%s in %s"
                                    .formatted(
                                            Saying.plain(
                                                    gears.get(0)
                                                            .ratio()
                                                            .over(gears.get(gears.size() - 1)
                                                                    .ratio()),
                                                    3),
                                            name(box));
                })
                .toList();
        return "The spread, first over top, is %s.".formatted(Names.joined(said));
    }

    private String gear(String gear, boolean same) {
        Optional<Fraction> here = ratio(one, gear);
        Optional<Fraction> there = ratio(other, gear);
        if (here.isEmpty() || there.isEmpty()) {
            return "%s has no %s.".formatted(here.isEmpty() ? name(one) : name(other), Names.gearName(gear));
        }
        String both = "%s is %s to 1 in %s and %s to 1 in %s"
                .formatted(
                        Saying.sentence(Names.gearName(gear)),
                        Saying.decimals(here.get()),
                        name(one),
                        Saying.decimals(there.get()),
                        name(other));
        if (same) {
            return both + taller(here.get(), there.get()) + ".";
        }
        Telling<Fraction> overallHere = overall(one, gear);
        Telling<Fraction> overallThere = overall(other, gear);
        Optional<String> why = overallHere.whyNot().or(overallThere::whyNot);
        return why.map(missing -> "%s; which is taller at the wheels %s.".formatted(both, missing))
                .orElseGet(() -> "%s; at the wheels %s and %s%s."
                        .formatted(
                                both,
                                Saying.decimals(overallHere.value().orElseThrow()),
                                Saying.decimals(overallThere.value().orElseThrow()),
                                taller(
                                        overallHere.value().orElseThrow(),
                                        overallThere.value().orElseThrow())));
    }

    private String taller(Fraction here, Fraction there) {
        int than = here.compareTo(there);
        return than == 0 ? ": the same" : ": taller in " + name(than < 0 ? one : other);
    }

    private static Optional<Fraction> ratio(Box box, String gear) {
        return box.gears().stream()
                .filter(each -> each.name().equals(gear))
                .map(Box.DerivedGear::ratio)
                .findFirst();
    }

    private static Telling<Fraction> overall(Box box, String gear) {
        return Vehicle.of(box, box.layout().road().orElse(Road.NOTHING))
                .gearing()
                .overall(gear);
    }
}
