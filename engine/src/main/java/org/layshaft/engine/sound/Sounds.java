package org.layshaft.engine.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;

/**
 * Everything that repeats while a sound box runs in one gear, or in neutral, straight ahead, nothing slipping.
 *
 * @param gear name of the gear; {@link #NEUTRAL} for none
 * @param sources family by family, in each by rising order; those of one order in the order of the layout
 * @param untold what else might be heard and cannot be told, and why, in sentences
 */
public record Sounds(String gear, List<Source> sources, List<String> untold) {
    public static final String NEUTRAL = "neutral";

    private static final Comparator<Source> FAMILY_BY_FAMILY = Comparator.comparing(
                    (Source source) -> source.kind().family())
            .thenComparing(source -> source.order().perTurn());

    public Sounds {
        sources = List.copyOf(sources);
        untold = List.copyOf(untold);
    }

    public static Sounds inGear(Layout layout, Names names, Box.DerivedGear gear) {
        return of(gear.name(), Rates.driving(layout, gear.stance()), names);
    }

    /**
     * In neutral, the clutch engaged.
     *
     * @param output turns of the output for one of the input, less than 0 for the other sense; 0 where the vehicle stands
     * @return empty where there is no neutral
     */
    public static Optional<Sounds> inNeutral(Layout layout, Names names, Fraction output) {
        return Rates.idle(layout, output).map(rates -> of(NEUTRAL, rates, names));
    }

    private static Sounds of(String gear, Rates rates, Names names) {
        BearingSources bearings = new BearingSources(rates, names);
        List<Source> sources = Stream.of(
                        new MeshSources(rates, names).all(),
                        new TurningSources(rates, names).all(),
                        new LineSources(rates, names).all(),
                        bearings.all(),
                        new ToothSources(rates, names).all())
                .flatMap(found -> found)
                .sorted(FAMILY_BY_FAMILY)
                .toList();
        List<String> untold = new ArrayList<>(new Untold(rates, names).sentences());
        untold.addAll(bearings.untold());
        return new Sounds(gear, sources, untold);
    }

    /**
     * What fits a frequency that was measured, the likeliest first.
     *
     * @param inputRpm turns of the input a minute, more than 0
     */
    public List<Match> fitting(Measured measured, Fraction inputRpm, Reach reach) {
        return new Matching(measured, inputRpm, reach).among(sources);
    }
}
