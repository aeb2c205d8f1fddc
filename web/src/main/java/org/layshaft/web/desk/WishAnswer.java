package org.layshaft.web.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.Serving;
import org.layshaft.engine.road.SpeedometerChange;
import org.layshaft.engine.stated.Telling;
import org.layshaft.engine.swap.AxleForCruise;
import org.layshaft.engine.swap.DrivenGears;
import org.layshaft.engine.swap.GearRules;
import org.layshaft.engine.swap.Proposal;
import org.layshaft.engine.swap.Target;
import org.layshaft.engine.swap.WishedSets;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Mesh;

/**
 * What meets a wish.
 *
 * @param layout with the teeth that the parts of the box have
 * @param built the build whose parts are known; empty where none is
 * @param others of how many more builds of the layout nothing is said here
 * @param asked in words
 * @param gear what other teeth do; empty where the wish is not of a gear
 * @param axle what another axle does; empty where the wish is not of one
 * @param reading what another driven speed gear does; empty where the wish is not of one
 */
public record WishAnswer(
        Layout layout,
        Optional<BuiltBox> built,
        int others,
        String asked,
        Optional<OfGear> gear,
        Optional<OfAxle> axle,
        Optional<OfReading> reading) {

    /**
     * A wish of one gear.
     *
     * @param gear its name
     * @param nearest whether the best is what changes least, and not a ratio of its own
     * @param ratios of every gear; reverse is less than 0
     * @param pair that would get other teeth
     * @param rules what is cut
     * @param proposals teeth that meet it, best first
     * @param sets that meet it
     */
    public record OfGear(
            String gear,
            boolean nearest,
            Map<String, Fraction> ratios,
            Telling<Target> target,
            Telling<Mesh> pair,
            GearRules rules,
            Telling<List<Proposal>> proposals,
            Telling<WishedSets> sets) {

        /** Its ratio, without sign. */
        public Fraction now() {
            return ratios.get(gear).absolute();
        }
    }

    /**
     * A wish of the axle.
     *
     * @param gear in which the engine speed is meant
     * @param now axle ratio that there is
     * @param exact that would do it exactly
     * @param choices that the catalogue has, the nearest first
     */
    public record OfAxle(
            String gear, Telling<Fraction> now, Telling<Fraction> exact, Telling<List<AxleChoice>> choices) {}

    /**
     * An axle ratio that there is.
     *
     * @param sets of the catalogue that have it
     */
    public record AxleChoice(AxleForCruise.Choice choice, List<PartSet> sets) {}

    /**
     * A wish of the speed reading.
     *
     * @param change what upsets it, or nothing
     * @param drivenTeeth of the driven gear that there is
     * @param exact teeth that would keep it right
     * @param choices that the catalogue has, the nearest first
     */
    public record OfReading(
            Telling<SpeedometerChange> change,
            Telling<Integer> drivenTeeth,
            Telling<Fraction> exact,
            Telling<List<DrivenChoice>> choices) {}

    /** A driven gear that there is, where it serves best. */
    public record DrivenChoice(DrivenGears.Choice choice, Serving serving) {}
}
