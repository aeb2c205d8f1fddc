package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
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
        layout.all(DogRing.class).map(DogRing::id).forEach(bodies::add);
        layout.all(HalfShaft.class).forEach(halfShaft -> {
            bodies.add(halfShaft.id());
            bodies.add(halfShaft.wheel());
        });
        if (outputs().size() > 1) {
            bodies.add(Train.ROAD);
        }
        return bodies;
    }

    String input() {
        return ShaftPiece.front(layout.input(), cuts.containsKey(layout.input()));
    }

    /** Wheels, and the rear ends of shafts that the drive leaves by. */
    List<String> outputs() {
        return layout.outputs().stream()
                .map(id -> layout.find(HalfShaft.class, id)
                        .map(HalfShaft::wheel)
                        .orElseGet(() -> ShaftPiece.rear(id, cuts.containsKey(id))))
                .toList();
    }

    /** The body that turns with this shaft at its rear end, or with this half-shaft. */
    String behind(String shaft) {
        return ShaftPiece.rear(shaft, cuts.containsKey(shaft));
    }

    /** The body that turns with this shaft at its front end. */
    String before(String shaft) {
        return ShaftPiece.front(shaft, cuts.containsKey(shaft));
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
