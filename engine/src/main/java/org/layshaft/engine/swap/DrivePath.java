package org.layshaft.engine.swap;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Objections;
import org.layshaft.engine.stated.Telling;

/**
 * One way of the drive to the road, stage by stage, as far as it is stated.
 *
 * @param name as it stands in a sentence: {@code the way to the front wheels}
 */
public record DrivePath(String name, List<Stage> stages) {

    /**
     * One reduction.
     *
     * @param name as it stands in a sentence: {@code the front axle}
     * @param ratio turns into it for one turn out of it
     */
    public record Stage(String name, Optional<Fraction> ratio) {}

    /** Throws {@link org.layshaft.engine.stated.ImpossibleFactsException} for a ratio that is not more than 0. */
    public DrivePath {
        stages = List.copyOf(stages);
        Objections objections = new Objections();
        stages.forEach(stage -> objections.unlessPositive(stage.ratio(), "the ratio of " + stage.name()));
        objections.refuse();
    }

    /** Of all stages, where all are stated. */
    public Telling<Fraction> product() {
        Telling<Fraction> product = Telling.told(Fraction.ONE);
        for (Stage stage : stages) {
            product = product.with(Telling.of(stage.ratio(), "the ratio of " + stage.name()), Fraction::times);
        }
        return product;
    }

    /** Of those stages that are stated. */
    public Fraction productOfStated() {
        return stages.stream().flatMap(stage -> stage.ratio().stream()).reduce(Fraction.ONE, Fraction::times);
    }
}
