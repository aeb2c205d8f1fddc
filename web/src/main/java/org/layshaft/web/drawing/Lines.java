package org.layshaft.web.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.DogRing;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Shaft;

/**
 * The lines of the drawing: what turns about one axis shares a line, called after its first shaft or its differential.
 * The spindle of planets has a line of its own beside that of its carrier, and an axle that lies across the shafts has
 * one at the height of its pinion.
 */
final class Lines {
    private final Layout layout;
    private final Map<String, String> lineOfCarrier;
    private final Map<String, Axle> acrossByDifferential = new LinkedHashMap<>();

    Lines(Layout layout) {
        this.layout = layout;
        this.lineOfCarrier = new Coaxial(layout).axes();
        Axle.across(layout).forEach(axle -> acrossByDifferential.put(axle.differential(), axle));
    }

    /** The bearings in which one shaft runs in another. */
    static List<Bearing> between(Layout layout) {
        return layout.all(Bearing.class)
                .filter(bearing -> layout.find(Shaft.class, bearing.inner()).isPresent())
                .filter(bearing -> layout.find(Shaft.class, bearing.outer()).isPresent())
                .toList();
    }

    List<String> all() {
        return lineOfCarrier.values().stream().distinct().toList();
    }

    /** The lines that have a place of their own, beside no other. */
    List<String> free() {
        return all().stream().filter(line -> beside(line).isEmpty()).toList();
    }

    /** The line that this one goes with: that of the planets' carrier, or of the pinion of an axle across. */
    Optional<String> beside(String line) {
        return layout.find(Shaft.class, line)
                .flatMap(Shaft::carriedBy)
                .map(this::ofCarrier)
                .or(() -> across(line).map(axle -> of(layout.gear(axle.pinion()))));
    }

    List<String> allBeside(String line) {
        return all().stream()
                .filter(other -> beside(other).filter(line::equals).isPresent())
                .toList();
    }

    /** The axle, where this line is that of one that lies across the shafts. */
    Optional<Axle> across(String line) {
        return Optional.ofNullable(acrossByDifferential.get(line));
    }

    List<Axle> axlesAcross() {
        return List.copyOf(acrossByDifferential.values());
    }

    /** The line of a shaft or differential. */
    String ofCarrier(String carrier) {
        return lineOfCarrier.get(carrier);
    }

    /** The line of a gear. */
    String of(Gear gear) {
        return ofItem(gear.id());
    }

    /** The line of anything that sits on a shaft or differential, or of these themselves. */
    String ofItem(String id) {
        return ofCarrier(Coaxial.carrier(layout, id));
    }

    List<Shaft> shafts(String line) {
        return layout.all(Shaft.class)
                .filter(shaft -> ofCarrier(shaft.id()).equals(line))
                .toList();
    }

    List<Differential> differentials(String line) {
        return layout.all(Differential.class)
                .filter(differential -> ofCarrier(differential.id()).equals(line))
                .toList();
    }

    /** Whether it is the line of a differential that no shaft drives. */
    boolean isAxle(String line) {
        return differentials(line).stream()
                .anyMatch(differential -> differential.shaft().isEmpty());
    }

    List<Gear> gears(String line) {
        return layout.all(Gear.class).filter(gear -> of(gear).equals(line)).toList();
    }

    List<DogRing> dogRings(String line) {
        return layout.all(DogRing.class)
                .filter(dogs -> ofCarrier(dogs.shaft()).equals(line))
                .toList();
    }

    /** Whether nothing on it but free gears turns. */
    boolean held(String line) {
        List<Shaft> shafts = new ArrayList<>(shafts(line));
        return !shafts.isEmpty() && shafts.stream().allMatch(Shaft::held);
    }
}
