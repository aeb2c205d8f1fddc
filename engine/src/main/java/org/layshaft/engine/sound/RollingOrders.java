package org.layshaft.engine.sound;

import java.math.BigDecimal;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Bearing;
import org.layshaft.kb.layout.Rolling;

/**
 * How often what rolls in a bearing passes, for one turn of its inner ring against its outer ring, nothing sliding.
 *
 * @param count balls or rollers
 * @param share diameter of a ball or roller over that of the pitch circle
 * @param along the same times the cosine of the contact angle
 * @param exact whether {@code along} is: at 0 degrees; else the cosine is not rational
 */
record RollingOrders(int count, Fraction share, Fraction along, boolean exact) {
    private static final Fraction TWO = Fraction.of(2);

    static Telling<RollingOrders> of(Bearing bearing, Rolling rolling) {
        String name = bearing.name();
        Telling<Integer> count = rolling.count().isPresent()
                ? Telling.told(rolling.count().getAsInt())
                : Telling.missing("the number of balls or rollers of the " + name);
        Telling<BigDecimal> element =
                Telling.of(rolling.elementMm(), "the diameter of a ball or roller of the " + name);
        Telling<BigDecimal> pitch = Telling.of(rolling.pitchMm(), "the pitch diameter of the " + name);
        Telling<BigDecimal> contact = Telling.of(rolling.contactDeg(), "the contact angle of the " + name);
        Telling<Fraction> share =
                element.with(pitch, (ball, circle) -> Fraction.of(ball).over(Fraction.of(circle)));
        return count.with(share, Sized::new).with(contact, (sized, degrees) -> sized.touchingAt(degrees));
    }

    private record Sized(int count, Fraction share) {
        RollingOrders touchingAt(BigDecimal degrees) {
            if (degrees.signum() == 0) {
                return new RollingOrders(count, share, share, true);
            }
            double cosine = Math.cos(Math.toRadians(degrees.doubleValue()));
            return new RollingOrders(count, share, share.times(Order.standing(cosine)), false);
        }
    }

    /** Turns of the cage against the outer ring. */
    Order cage() {
        return order(Fraction.ONE.minus(along).over(TWO));
    }

    /** Turns of the cage against the inner ring. */
    Order cageAgainstInner() {
        return order(Fraction.ONE.plus(along).over(TWO));
    }

    Order outerRace() {
        return cage().times(count);
    }

    Order innerRace() {
        return cageAgainstInner().times(count);
    }

    /** Turns of a ball or roller about itself, as the cage sees them. */
    Order spin() {
        Fraction square = along.times(along);
        return order(Fraction.ONE.minus(square).over(TWO.times(share)));
    }

    /** One place on a ball or roller strikes the inner race and the outer race once each in a spin. */
    Order strikes() {
        return spin().times(2);
    }

    private Order order(Fraction perTurn) {
        return new Order(perTurn, exact);
    }
}
