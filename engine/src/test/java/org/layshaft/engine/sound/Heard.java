package org.layshaft.engine.sound;

import java.util.List;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box.DerivedGear;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Boxes;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;

/** The layouts of Saltmarsh listened to. */
final class Heard {
    private static final Reasoner REASONER = Reasoners.standard(Boxes.knowledge());

    private Heard() {}

    static List<DerivedGear> gears(Layout layout) {
        return REASONER.box(layout).gears();
    }

    static Names names(Layout layout) {
        return new Names(layout, Boxes.knowledge().words());
    }

    static Sounds in(Layout layout, String gear) {
        DerivedGear derived = gears(layout).stream()
                .filter(each -> each.name().equals(gear))
                .findFirst()
                .orElseThrow();
        return Sounds.inGear(layout, names(layout), derived);
    }

    static Sounds in(String layout, String gear) {
        return in(Boxes.the(layout), gear);
    }

    /** In neutral, the output turning so often for one turn of the input. */
    static Sounds inNeutral(String layout, Fraction output) {
        Layout box = Boxes.the(layout);
        return Sounds.inNeutral(box, names(box), output).orElseThrow();
    }

    /** The sources of a kind that are about this part. */
    static List<Source> of(Sounds sounds, SourceKind kind, String part) {
        return sounds.sources().stream()
                .filter(source -> source.kind() == kind && source.parts().contains(part))
                .toList();
    }

    /** The one source of a kind that is about this part first of all. */
    static Source the(Sounds sounds, SourceKind kind, String part) {
        List<Source> found = sounds.sources().stream()
                .filter(source -> source.kind() == kind && source.parts().get(0).equals(part))
                .toList();
        if (found.size() != 1) {
            throw new AssertionError("%s of %s: %s".formatted(kind, part, found));
        }
        return found.get(0);
    }
}
