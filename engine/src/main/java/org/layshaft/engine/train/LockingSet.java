package org.layshaft.engine.train;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.api.Motion.Outcome;
import org.layshaft.engine.exact.Fraction;

/**
 * Connections that lock a train by themselves, none of which can be spared.
 *
 * @param connections those connections, in the order of the train
 * @param certificate that these alone lock it
 * @param freedWithout by id of each of them, a motion that all the others allow and in which the input or an output
 *     turns
 */
public record LockingSet(
        List<Connection> connections, Certificate certificate, Map<String, Map<String, Fraction>> freedWithout) {
    public LockingSet {
        connections = List.copyOf(connections);
        freedWithout = Collections.unmodifiableMap(new LinkedHashMap<>(freedWithout));
    }

    /** Empty where the train is not locked. Where several sets lock it, one of them. */
    public static Optional<LockingSet> of(Train train) {
        if (!locks(train)) {
            return Optional.empty();
        }
        List<Row> needed = new ArrayList<>(train.rows());
        for (Row each : train.rows()) {
            if (locks(without(each, needed, train))) {
                needed.remove(each);
            }
        }
        Map<String, Map<String, Fraction>> freed = new LinkedHashMap<>();
        needed.forEach(each -> freed.put(each.id(), freedom(without(each, needed, train))));
        Train locked = train.tiedBy(List.copyOf(needed));
        return Optional.of(new LockingSet(locked.connections(), Certifier.certify(locked), freed));
    }

    private static boolean locks(Train train) {
        return TrainSolver.outcome(train, Speeds.perTurnOfInput(train)) == Outcome.LOCKED;
    }

    private static Train without(Row one, List<Row> rows, Train train) {
        return train.tiedBy(rows.stream().filter(each -> each != one).toList());
    }

    private static Map<String, Fraction> freedom(Train train) {
        return Certifier.certify(train).motions().get(0);
    }
}
