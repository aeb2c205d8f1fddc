package org.layshaft.engine.sound;

import java.math.BigDecimal;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Rolling;

/**
 * How often what rolls in a bearing passes, for one turn of its inner ring against its outer ring, nothing sliding. Exact
 * at a contact angle of 0; at any other its cosine stands as the nearest double.
 *
 * @param count balls or rollers
 * @param elementMm diameter of one
 * @param pitchMm diameter of the circle through their middles
 * @param contactDeg contact angle
 */
record RollingOrders(int count, BigDecimal elementMm, BigDecimal pitchMm, BigDecimal contactDeg) {
    private static final Fraction HALF = Fraction.of(1, 2);

    static Telling<RollingOrders> of(Bearing bearing, Rolling rolling) {
        String name = bearing.name();
        Telling<Integer> count = rolling.count().isPresent()
                ? Telling.told(rolling.count().getAsInt())
                : Telling.missing("the number of balls or rollers of the " + name);
        return count.with(
                        Telling.of(rolling.elementMm(), "the diameter of a ball or roller of the " + name)
                                .with(Telling.of(rolling.pitchMm(), "the pitch diameter of the " + name), Across::new),
                        Numbered::new)
                .with(
                        Telling.of(rolling.contactDeg(), "the contact angle of the " + name),
                        (known, degrees) -> new RollingOrders(
                                known.count(),
                                known.across().elementMm(),
                                known.across().pitchMm(),
                                degrees));
    }

    private record Across(BigDecimal elementMm, BigDecimal pitchMm) {}

    private record Numbered(int count, Across across) {}

    /** Turns of the cage against the outer ring. */
    Order cage() {
        return order(Fraction.ONE.minus(along()).times(HALF));
    }

    Order outerRace() {
        return cage().times(count);
    }

    Order innerRace() {
        return order(Fraction.ONE.plus(along()).times(HALF)).times(count);
    }

    /** Turns of a ball or roller about itself, as the cage sees them. */
    Order spin() {
        return order(Fraction.ONE.minus(along().times(along())).times(HALF).over(share()));
    }

    /** One place on a ball or roller strikes the inner race and the outer race once each in a spin. */
    Order strikes() {
        return spin().times(2);
    }

    /** The part of the pitch diameter that a ball or roller takes up along the line of contact: {@code 9.2/61 × cos 15.5°}. */
    String saysAlong() {
        return saysShare() + (isSquare() ? "" : " × cos %s°".formatted(contactDeg.toPlainString()));
    }

    /** {@code 9.2/61}. */
    String saysShare() {
        return "%s/%s".formatted(elementMm.toPlainString(), pitchMm.toPlainString());
    }

    private Fraction share() {
        return Fraction.of(elementMm).over(Fraction.of(pitchMm));
    }

    private Fraction along() {
        return isSquare() ? share() : share().times(Order.standing(Math.cos(Math.toRadians(contactDeg.doubleValue()))));
    }

    private boolean isSquare() {
        return contactDeg.signum() == 0;
    }

    private Order order(Fraction perTurn) {
        return new Order(perTurn, isSquare());
    }
}
