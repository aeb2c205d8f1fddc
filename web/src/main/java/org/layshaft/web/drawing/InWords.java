package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Motion;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Clutch;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.Seat;
import org.layshaft.kb.layout.Shaft;

/** What the drawing says to those who do not see it, and what is said of a part one points at. */
record InWords(Layout layout, View view) {
    private static final Map<Seat, String> SEATS = Map.of(
            Seat.FIXED, "fixed on", Seat.FREE, "free on", Seat.SLIDING, "sliding on", Seat.RIM, "on the outside of");

    String title() {
        if (view.stance().engaged().isEmpty()) {
            return layout.name() + ", in neutral, seen " + from();
        }
        String stands = view.stance().engaged().entrySet().stream()
                .map(entry ->
                        name(entry.getKey()) + " toward the " + entry.getValue().word())
                .collect(Collectors.joining(", "));
        return layout.name() + ", seen " + from() + ": " + stands;
    }

    private String from() {
        return view.from() == View.From.END ? "from the clutch end, along the shafts" : "from the side";
    }

    String description(PowerPath path) {
        List<String> says = new ArrayList<>();
        view.motion().ifPresent(motion -> says.add(outcome(motion)));
        path.ways()
                .forEach(way -> says.add("Power passes through "
                        + way.stream()
                                .map(layout.parts()::get)
                                .filter(part -> !(part instanceof Hub) && !(part instanceof ClutchingTeeth))
                                .map(part -> view.told().word().apply(part.name()))
                                .collect(Collectors.joining(", "))
                        + "."));
        view.motion().map(this::standing).filter(still -> !still.isEmpty()).ifPresent(says::add);
        if (!view.faultyParts().isEmpty()) {
            says.add("Faulty: " + names(view.faultyParts()) + ".");
        }
        if (!view.meantParts().isEmpty()) {
            says.add("Ringed: " + names(view.meantParts()) + ".");
        }
        if (view.from() == View.From.SIDE) {
            says.add("The clutch end is on the left.");
        }
        return String.join(" ", says);
    }

    /** Which shafts stand and which are not driven: what the arrows of the drawing say by being absent. */
    private String standing(Motion motion) {
        Bodies bodies = new Bodies(layout, motion);
        List<String> says = new ArrayList<>();
        for (Bodies.State state : List.of(Bodies.State.TURNS, Bodies.State.STANDS_STILL, Bodies.State.NOT_DRIVEN)) {
            List<String> shafts = layout.all(Shaft.class)
                    .filter(shaft -> bodies.state(shaft) == state)
                    .map(Shaft::id)
                    .map(this::name)
                    .toList();
            if (!shafts.isEmpty()) {
                String verb = switch (state) {
                    case TURNS -> "Turning";
                    case STANDS_STILL -> "Standing";
                    default -> "Not driven";
                };
                says.add("%s: %s.".formatted(verb, String.join(", ", shafts)));
            }
        }
        return String.join(" ", says);
    }

    private String outcome(Motion motion) {
        return switch (motion.outcome()) {
            case DRIVES ->
                motion.ratio()
                        .map(ratio -> "Drives %s, %s turns of the input for one of the output."
                                .formatted(
                                        (ratio.signum() < 0 ? "against the %s's sense" : "in the %s's sense")
                                                .formatted(driver(layout)),
                                        Svg.number(ratio.absolute().toDouble())))
                        .orElse("Drives.");
            case NEUTRAL -> "No drive: input and output can turn without each other.";
            case LOCKED -> "Locked: input and output can only stand still.";
            case INPUT_HELD -> "The input is held; the output is free.";
            case OUTPUT_HELD -> "The output is held; the input is free.";
        };
    }

    String ofPart(Part part, Bodies.State state, Optional<Fraction> speed, boolean carries) {
        List<String> says = new ArrayList<>();
        says.add(view.told().word().apply(part.name()));
        if (part instanceof Gear gear) {
            says.add(gear.teeth() + " teeth");
            says.add(
                    gear.moduleMm().isPresent()
                            ? "module " + Svg.number(gear.moduleMm().getAsDouble()) + " mm"
                            : "module not told");
            says.add(form(gear));
            says.add(SEATS.get(gear.seat()) + " " + name(gear.carrier()));
            layout.find(Shaft.class, gear.carrier())
                    .filter(shaft -> shaft.count() > 1)
                    .ifPresent(shaft -> says.add("one of " + shaft.count()));
        }
        if (part instanceof Shaft shaft) {
            shaft.carriedBy().ifPresent(carrier -> says.add("carried round by the " + name(carrier)));
        }
        if (part instanceof Clutch clutch) {
            clutch.drivenBy()
                    .ifPresent(driver -> says.add("between the " + name(driver) + " and the " + name(clutch.drives())));
        }
        if (part instanceof DogRing dogs && layout.shaft(dogs.shaft()).held()) {
            says.add("stands in the case");
        }
        if (part instanceof Differential differential) {
            says.add("shares the turning between "
                    + differential.sides().stream().map(this::name).collect(Collectors.joining(" and ")));
            differential.limitedSlip().ifPresent(limited -> says.add("limited slip"));
        }
        if (part instanceof Shaft shaft && shaft.held()) {
            says.add("held in the case");
        } else if (state == Bodies.State.STANDS_STILL) {
            says.add("stands still");
        } else if (state == Bodies.State.NOT_DRIVEN) {
            says.add("not driven");
        } else if (state == Bodies.State.TURNS) {
            speed.ifPresent(turns -> {
                says.add(turns(layout, turns));
                view.told()
                        .inputRpm()
                        .ifPresent(rpm ->
                                says.add(Svg.number(turns.times(rpm).absolute().toDouble()) + " rpm"));
            });
        }
        torque(part).ifPresent(says::add);
        String shown = view.told().word().apply(part.name());
        view.told().also().apply(part.name()).stream()
                .filter(other -> !other.endsWith(": " + shown))
                .forEach(says::add);
        if (carries) {
            says.add(state == Bodies.State.STANDS_STILL ? "holds against the torque" : "carries power");
        }
        if (view.faultyParts().contains(part.id())) {
            says.add("faulty");
        }
        return String.join(", ", says);
    }

    /** The torque through it, against the input's and in N·m where that is told. */
    private Optional<String> torque(Part part) {
        return view.told()
                .torques()
                .flatMap(torques -> torques.through(part.id()))
                .filter(times -> !times.isZero())
                .map(times -> "torque %s times the input's%s"
                        .formatted(
                                Svg.number(times.toDouble()),
                                view.told()
                                        .inputNm()
                                        .map(nm -> " = %s N·m"
                                                .formatted(Svg.number(
                                                        times.times(nm).toDouble())))
                                        .orElse("")));
    }

    private static String form(Gear gear) {
        return switch (gear.form()) {
            case EXTERNAL -> gear.helixDeg() == 0 ? "straight cut" : "helical";
            case INTERNAL -> gear.helixDeg() == 0 ? "teeth inside, straight cut" : "teeth inside, helical";
            case BEVEL -> gear.helixDeg() == 0 ? "straight bevel" : "spiral bevel";
            case SPROCKET -> "for a chain";
        };
    }

    /** What drives the input: the engine, where there is a clutch to let it go; else whatever comes before. */
    static String driver(Layout layout) {
        return layout.all(Clutch.class).findAny().isPresent() ? "engine" : "input";
    }

    static String turning(Layout layout, String name, Fraction speed) {
        return name + " " + turns(layout, speed);
    }

    private static String turns(Layout layout, Fraction speed) {
        String driver = driver(layout);
        String sense =
                speed.signum() > 0 ? "as the " + driver + " does (+)" : "the other way than the " + driver + " (−)";
        return "turns %s times for one turn of the input, %s"
                .formatted(Svg.number(speed.absolute().toDouble()), sense);
    }

    private String names(Set<String> ids) {
        return layout.parts().keySet().stream()
                .filter(ids::contains)
                .map(this::name)
                .collect(Collectors.joining(", "));
    }

    private String name(String id) {
        return Optional.ofNullable(layout.parts().get(id))
                .map(Part::name)
                .map(view.told().word())
                .orElse(id);
    }
}
