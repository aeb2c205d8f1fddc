package org.layshaft.web.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;

/** On which end of the drawing shafts leave it that the drive leaves by. */
record Exits(Layout layout, Lines lines, Columns columns) {

    /** Shafts toward the road, then those of a power take-off. */
    List<Shaft> shafts() {
        return Stream.concat(layout.outputs().stream(), layout.takeOffs().stream())
                .flatMap(id -> layout.find(Shaft.class, id).stream())
                .distinct()
                .toList();
    }

    boolean isTakeOff(Shaft shaft) {
        return layout.takeOffs().contains(shaft.id());
    }

    boolean leaves(Shaft shaft) {
        return shafts().contains(shaft);
    }

    /** Rearward, but for one of several that stands in the front half of the box with nothing in front of it. */
    Side end(Shaft shaft) {
        boolean alone = shafts().size() == 1;
        return !alone && middle(shaft) < middleOfAll() - 1 && isFirst(shaft) ? Side.FRONT : Side.REAR;
    }

    private boolean isFirst(Shaft shaft) {
        String line = lines.ofCarrier(shaft.id());
        return !line.equals(lines.ofCarrier(layout.input()))
                && lines.shafts(line).stream()
                        .filter(other -> !other.along().isEmpty())
                        .allMatch(other -> other.equals(shaft) || middle(other) > middle(shaft));
    }

    private double middle(Shaft shaft) {
        return shaft.along().stream().mapToDouble(columns::of).average().orElse(0);
    }

    private double middleOfAll() {
        double[] all = layout.all(Shaft.class)
                .flatMap(shaft -> shaft.along().stream())
                .mapToDouble(columns::of)
                .sorted()
                .toArray();
        return all.length == 0 ? 0 : (all[0] + all[all.length - 1]) / 2;
    }
}
