package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/**
 * Finds the boxes, and the places in them, that somebody names. Throws {@link BadInputException} with what is nearest
 * where a name is not known.
 */
final class BuiltBoxes {
    private final Collection<Layout> layouts;
    private final List<BuiltBox> built;

    BuiltBoxes(Collection<Layout> layouts, List<BuiltBox> built) {
        this.layouts = layouts;
        this.built = built;
    }

    List<BuiltBox> all() {
        return built;
    }

    /**
     * The boxes of this build, or of all builds of this layout, by id or name.
     *
     * @param serial only those that this serial number is within
     */
    List<BuiltBox> called(String written, Optional<Integer> serial) {
        List<BuiltBox> boxes = called(written.strip());
        List<BuiltBox> within = boxes.stream()
                .filter(box -> serial.isEmpty() || box.build().serials().contains(serial.get()))
                .toList();
        if (within.isEmpty()) {
            throw new BadInputException(
                    UNFIT,
                    "No box of %s has the serial number %d. There are: %s."
                            .formatted(boxes.get(0).layout().name(), serial.orElseThrow(), builds(boxes)));
        }
        return within;
    }

    private static String builds(List<BuiltBox> boxes) {
        return boxes.stream()
                .map(box -> box.build().name() + ", " + box.build().serials().words())
                .collect(Collectors.joining("; "));
    }

    private List<BuiltBox> called(String wanted) {
        List<BuiltBox> builds = built.stream()
                .filter(box -> wanted.equalsIgnoreCase(box.build().id())
                        || wanted.equalsIgnoreCase(box.build().name()))
                .toList();
        List<BuiltBox> boxes = builds.isEmpty()
                ? built.stream().filter(box -> isCalled(box.layout(), wanted)).toList()
                : builds;
        if (boxes.isEmpty()) {
            throw unknown(wanted);
        }
        return boxes;
    }

    private BadInputException unknown(String wanted) {
        List<String> known = built.stream()
                .flatMap(box -> Stream.of(box.layout().id(), box.build().id()))
                .distinct()
                .toList();
        String choose = known.isEmpty()
                ? "No catalogue that tells of boxes is loaded: give a folder of packs that has one."
                : "Choose one of: %s.".formatted(String.join(", ", known));
        return layouts.stream()
                .filter(layout -> isCalled(layout, wanted))
                .findFirst()
                .map(layout -> new BadInputException(
                        UNFIT,
                        "What stands in a %s is not known: the catalogue tells of no box of it. %s"
                                .formatted(layout.name(), choose)))
                .orElseGet(() -> new BadInputException(
                        UNKNOWN, "No box is called \"%s\". %s".formatted(wanted, choose), Nearest.to(wanted, known)));
    }

    private static boolean isCalled(Layout layout, String name) {
        return layout.id().equalsIgnoreCase(name) || layout.name().equalsIgnoreCase(name);
    }

    /** The id of the place of this id or name in any of these boxes. */
    static String place(String written, List<BuiltBox> boxes) {
        String wanted = written.strip();
        List<Part> parts = boxes.stream()
                .flatMap(box -> box.layout().parts().values().stream())
                .toList();
        List<String> ids = Stream.concat(
                        parts.stream().map(Part::id),
                        boxes.stream().flatMap(box -> box.build().fitted().keySet().stream()))
                .distinct()
                .toList();
        return ids.stream()
                .filter(wanted::equalsIgnoreCase)
                .findFirst()
                .or(() -> parts.stream()
                        .filter(part -> isCalled(part, wanted))
                        .map(Part::id)
                        .findFirst())
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "%s has no place \"%s\". A place is named by what stands there: third, 3-4-hub, countershaft."
                                .formatted(boxes.get(0).layout().name(), wanted),
                        Nearest.to(wanted, ids)));
    }

    private static boolean isCalled(Part part, String name) {
        return Stream.concat(Stream.of(part.name()), part.also().stream()).anyMatch(name::equalsIgnoreCase);
    }
}
