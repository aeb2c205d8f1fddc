package org.layshaft.web.asking;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Part;

/** The sides of what a fork moves, by the gears that lie there. */
public final class Sides {
    private Sides() {}

    /** The gear engaged by what this part moves or belongs to, on a side by its word. */
    public static Optional<String> gearAt(Box box, String part, String side) {
        return box.gears().stream()
                .filter(gear -> gear.pushes().stream()
                        .anyMatch(push ->
                                push.side().word().equals(side) && push.member().equals(member(box, part))))
                .map(Box.DerivedGear::name)
                .findFirst();
    }

    /** The side, by its word, on which what this part moves or belongs to engages a gear. */
    public static Optional<String> sideOf(Box box, String part, String gear) {
        return box.gears().stream()
                .filter(each -> each.name().equals(gear))
                .flatMap(each -> each.pushes().stream())
                .filter(push -> push.member().equals(member(box, part)))
                .map(push -> push.side().word())
                .findFirst();
    }

    /** The side, by its word, on which what this part moves or belongs to couples one of these wheels. */
    public static Optional<String> sideOfWheel(Box box, String part, List<String> wheels) {
        return box.layout().members().stream()
                .filter(member -> member.part().equals(member(box, part)))
                .flatMap(member -> member.sides().entrySet().stream())
                .filter(side -> side.getValue() instanceof Engagement.Couples couples && wheels.contains(couples.to()))
                .map(side -> side.getKey().word())
                .findFirst();
    }

    private static String member(Box box, String id) {
        Part part = box.layout().the(Part.class, id);
        if (part instanceof Fork fork) {
            return fork.member();
        } else if (part instanceof Hub hub) {
            return hub.sleeve();
        } else if (part instanceof BlockingRing ring) {
            return ring.sleeve();
        } else if (part instanceof ClutchingTeeth teeth) {
            return teeth.sleeve();
        }
        return id;
    }
}
