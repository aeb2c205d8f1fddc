package org.layshaft.engine.symptom;

import java.util.HashMap;
import java.util.Map;
import org.layshaft.engine.api.ShaftPiece;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.train.Condition;
import org.layshaft.engine.train.Speed;
import org.layshaft.engine.train.Train;
import org.layshaft.engine.train.Turning;

/** How all bodies of a train turn in one condition, told apart by number: bodies of one number turn as one. */
final class Turned {
    private static final int FREE = -1;
    private static final int STANDS = 0;

    private final Map<String, Integer> numbers = new HashMap<>();
    private final boolean engineTurns;
    private final boolean wheelsCanRoll;

    Turned(Train train, Condition condition) {
        Turning turning = Turning.of(train, condition);
        Map<Speed, Integer> known = new HashMap<>();
        known.put(speedOfEngine(), 1);
        for (String body : train.bodies()) {
            Speed speed = turning.speedOf(body);
            int number = switch (speed.fixedBy()) {
                case NOTHING -> FREE;
                case STANDS -> STANDS;
                default -> known.computeIfAbsent(speed, another -> known.size() + 1);
            };
            numbers.put(body, number);
            numbers.merge(ShaftPiece.shaftOf(body), number, (one, other) -> one > STANDS ? one : other);
        }
        engineTurns = condition.clutch() == Condition.Clutch.RELEASED || turning.engineCanTurn();
        wheelsCanRoll = turning.wheelsCanRoll();
    }

    private static Speed speedOfEngine() {
        return new Speed(Fraction.ONE, Fraction.ZERO, false);
    }

    /** Whether it turns for certain: what nothing drives comes to rest. */
    boolean turns(String body) {
        return number(body) > STANDS;
    }

    boolean turnUnlike(String one, String other) {
        return Math.max(STANDS, number(one)) != Math.max(STANDS, number(other));
    }

    boolean wheelsCanRoll() {
        return wheelsCanRoll;
    }

    private int number(String body) {
        if (body.equals(Concerned.ENGINE) || body.equals(Concerned.CLUTCH_FINGERS)) {
            return engineTurns ? 1 : STANDS;
        }
        return numbers.getOrDefault(body, STANDS);
    }
}
