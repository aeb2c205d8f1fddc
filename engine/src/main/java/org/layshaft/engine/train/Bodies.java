package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Sleeve;

/**
 * What can turn. A cut shaft is two bodies; a held one is none.
 *
 * @param cuts by shaft, the id of what sits just in front of the break
 */
record Bodies(Layout layout, Map<String, String> cuts) {

    List<String> all() {
        List<String> bodies = new ArrayList<>();
        layout.all(Shaft.class).filter(shaft -> !shaft.held()).forEach(shaft -> bodies.addAll(pieces(shaft)));
        layout.all(Gear.class).map(Gear::id).forEach(bodies::add);
        layout.all(Sleeve.class).map(Sleeve::id).forEach(bodies::add);
        layout.all(Differential.class).map(Differential::id).forEach(bodies::add);
        layout.all(HalfShaft.class).forEach(halfShaft -> {
            bodies.add(halfShaft.id());
            bodies.add(halfShaft.wheel());
        });
        return bodies;
    }

    String input() {
        return ShaftPiece.front(layout.input(), cuts.containsKey(layout.input()));
    }

    List<String> outputs() {
        Optional<Differential> differential = layout.differential();
        if (differential.isPresent()) {
            return differential.get().halfShafts().stream()
                    .map(id -> layout.the(HalfShaft.class, id).wheel())
                    .toList();
        }
        return List.of(ShaftPiece.rear(layout.output(), cuts.containsKey(layout.output())));
    }

    /** The body that something on a shaft sits on. */
    String under(Shaft shaft, String item) {
        String cut = cuts.get(shaft.id());
        if (cut == null) {
            return shaft.id();
        }
        boolean inFront = shaft.along().indexOf(item) <= shaft.along().indexOf(cut);
        return inFront ? ShaftPiece.front(shaft.id(), true) : ShaftPiece.rear(shaft.id(), true);
    }

    private List<String> pieces(Shaft shaft) {
        return cuts.containsKey(shaft.id())
                ? List.of(ShaftPiece.front(shaft.id(), true), ShaftPiece.rear(shaft.id(), true))
                : List.of(shaft.id());
    }
}
