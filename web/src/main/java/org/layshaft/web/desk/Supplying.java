package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.PartsCounter;
import org.layshaft.engine.fit.Supply;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.catalogue.SerialRange;
import org.layshaft.web.desk.FitAnswer.Supplied;

/** Looks up what is supplied today of everything that an answer names. */
final class Supplying {
    private final PartsCounter counter;

    Supplying(PartsCounter counter) {
        this.counter = counter;
    }

    /** Of the set itself in any case; of its parts, and of what must come along, where there is something to be said. */
    List<Supplied> of(FitAnswer answer) {
        if (answer.everyBox()) {
            return answer.set()
                    .map(set -> of(set, answer, Optional.empty()))
                    .orElse(Stream.of())
                    .toList();
        }
        return answer.boxes().stream()
                .flatMap(box -> answer.set()
                        .map(set -> of(set, answer, Optional.of(box)))
                        .orElse(Stream.of()))
                .toList();
    }

    private Stream<Supplied> of(PartSet set, FitAnswer answer, Optional<BuiltBox> box) {
        SerialRange range = answer.serial()
                .map(serial -> new SerialRange(OptionalInt.of(serial), OptionalInt.of(serial)))
                .or(() -> box.map(each -> each.build().serials()))
                .orElse(SerialRange.ALL);
        Supply own = counter.supply(set.number(), range);
        Stream<String> companions = answer.servings().stream()
                .filter(serving -> box.filter(serving.box()::equals).isPresent())
                .flatMap(serving -> serving.companions().stream())
                .flatMap(each -> each.units().stream())
                .map(PartSet::number);
        Stream<Supply> others = Stream.concat(set.parts().values().stream(), companions)
                .distinct()
                .filter(number -> !number.equals(set.number()))
                .map(number -> counter.supply(number, range))
                .filter(SupplyWording::hasSomethingToSay);
        return Stream.concat(Stream.of(own), others).map(supply -> new Supplied(box, supply));
    }
}
