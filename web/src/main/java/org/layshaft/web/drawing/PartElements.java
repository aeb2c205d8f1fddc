package org.layshaft.web.drawing;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Part;

/** Writes each figure as the element of its part: a link where there is an address, with its state told by its line. */
final class PartElements {
    /** A deeper tint keeps these apart from the gears that they couple. */
    private static final Set<Ink> COUPLERS = EnumSet.of(Ink.SLEEVE, Ink.HUB, Ink.CLUTCHING_TEETH, Ink.CLUTCH);

    private final View view;
    private final InWords words;
    private final PowerPath path;
    private final Optional<Bodies> bodies;

    PartElements(View view, InWords words, PowerPath path, Optional<Bodies> bodies) {
        this.view = view;
        this.words = words;
        this.path = path;
        this.bodies = bodies;
    }

    void write(Svg svg, Figure figure) {
        Part part = figure.part();
        Bodies.State state = bodies.map(all -> all.state(part)).orElse(Bodies.State.NONE);
        Optional<Fraction> speed = bodies.flatMap(all -> all.speed(part));
        boolean carries = path.passes(part.id())
                || view.motion()
                        .filter(motion -> Bodies.carries(motion, part.id()))
                        .isPresent();
        Optional<String> link = view.linkOf().apply(part.id());
        svg.open(
                link.isPresent() ? "a" : "g",
                "href",
                link.orElse(null),
                "aria-label",
                link.map(address -> view.told().word().apply(part.name())).orElse(null),
                "class",
                classes(figure, state, carries),
                "data-part",
                part.id(),
                "fill",
                fill(figure, state, carries),
                "stroke",
                carries ? Ink.POWER : idle(state) ? Ink.STILL_LINE : Ink.LINE,
                "stroke-width",
                carries ? 2.8 : 1.3,
                "stroke-dasharray",
                carries && !idle(state) ? null : dashes(state));
        svg.say("title", words.ofPart(part, state, speed, carries));
        figure.shapes().accept(svg);
        svg.close();
    }

    private String classes(Figure figure, Bodies.State state, boolean carries) {
        Part part = figure.part();
        StringBuilder classes = new StringBuilder("part ")
                .append(part.kind().word())
                .append(' ')
                .append(figure.ink().word());
        if (part instanceof Gear gear) {
            classes.append(gear.isFree() ? " free" : "");
        }
        if (state != Bodies.State.NONE) {
            classes.append(' ').append(state.word());
        }
        classes.append(carries ? idle(state) ? " holds" : " carries" : "");
        classes.append(view.faultyParts().contains(part.id()) ? " faulty" : "");
        classes.append(view.meantParts().contains(part.id()) ? " meant" : "");
        return classes.toString();
    }

    private static String fill(Figure figure, Bodies.State state, boolean carries) {
        if (carries && !idle(state)) {
            return COUPLERS.contains(figure.ink()) ? Ink.CARRYING_DEEP : Ink.CARRYING;
        }
        return idle(state) ? Ink.STILL : figure.ink().fill();
    }

    private static boolean idle(Bodies.State state) {
        return state == Bodies.State.STANDS_STILL || state == Bodies.State.NOT_DRIVEN;
    }

    static String dashes(Bodies.State state) {
        if (!idle(state)) {
            return null;
        }
        return state == Bodies.State.STANDS_STILL ? "5 2.5" : "1.5 2.5";
    }
}
