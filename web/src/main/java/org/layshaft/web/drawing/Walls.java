package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.List;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/** Which bearings sit in the front wall of the case, and which in its rear wall. */
final class Walls {
    private final List<String> front = new ArrayList<>();
    private final List<String> rear = new ArrayList<>();
    private final List<String> single = new ArrayList<>();

    Walls(Layout layout, Lines lines) {
        for (String line : lines.all()) {
            List<String> along = lines.shafts(line).stream()
                    .map(Shaft::along)
                    .flatMap(List::stream)
                    .toList();
            List<String> inCase = along.stream()
                    .filter(id -> layout.find(Bearing.class, id)
                            .filter(bearing -> bearing.outer().equals(Bearing.CASE))
                            .isPresent())
                    .toList();
            if (inCase.size() > 1) {
                front.add(inCase.get(0));
                rear.add(inCase.get(inCase.size() - 1));
            } else if (inCase.size() == 1) {
                single.add(inCase.get(0));
            }
        }
    }

    List<String> front() {
        return front;
    }

    /** Those that are the only ones of their line, in whichever wall is near. */
    List<String> single() {
        return single;
    }

    List<String> rear() {
        return rear;
    }
}
