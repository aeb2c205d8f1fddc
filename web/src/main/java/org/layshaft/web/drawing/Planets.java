package org.layshaft.web.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.GearForm;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;
import org.layshaft.kb.layout.Shaft;

/** Planets as they are drawn: above the axis and below it, or, of two that mesh with each other, one above and one below. */
record Planets(Layout layout) {

    /** The spindles that something carries round. */
    List<Shaft> spindles() {
        return layout.all(Shaft.class)
                .filter(shaft -> shaft.carriedBy().isPresent())
                .toList();
    }

    Stream<Gear> gears(Shaft spindle) {
        return layout.all(Gear.class).filter(gear -> gear.carrier().equals(spindle.id()));
    }

    boolean isPlanet(String gear) {
        return spindles().stream()
                .anyMatch(spindle -> layout.gear(gear).carrier().equals(spindle.id()));
    }

    /** Up is -1, down 1. */
    int way(Shaft spindle) {
        return isDrawnTwice(spindle) || alike(spindle).indexOf(spindle) % 2 == 0 ? -1 : 1;
    }

    /** Whether its planets are drawn on both sides of the axis. */
    boolean isDrawnTwice(Shaft spindle) {
        return alike(spindle).size() == 1;
    }

    /** This and those that its planets mesh with, in the order of the layout. */
    private List<Shaft> alike(Shaft spindle) {
        return spindles().stream()
                .filter(other -> other.equals(spindle) || gears(spindle).anyMatch(planet -> meshesWith(planet, other)))
                .toList();
    }

    private boolean meshesWith(Gear planet, Shaft other) {
        return mates(planet).anyMatch(mate -> layout.gear(mate).carrier().equals(other.id()));
    }

    /** The gears that this one meshes with, by id. */
    Stream<String> mates(Gear gear) {
        return layout.everyMesh().filter(mesh -> mesh.joins(gear.id())).map(mesh -> mesh.other(gear.id()));
    }

    /** The meshes of these planets with gears that nothing carries round. */
    List<Mesh> meshesOf(Shaft spindle) {
        return gears(spindle)
                .flatMap(planet -> layout.everyMesh()
                        .filter(mesh -> mesh.joins(planet.id()))
                        .filter(mesh -> !isPlanet(mesh.other(planet.id()))))
                .toList();
    }

    /** Whether planets run inside this gear or around it. */
    boolean isInSet(Gear gear) {
        return isPlanet(gear.id()) || mates(gear).anyMatch(this::isPlanet);
    }

    boolean isRing(Gear gear) {
        return gear.form() == GearForm.INTERNAL;
    }
}
