package org.layshaft.web.json;

import java.math.BigDecimal;
import org.layshaft.engine.sound.Order;
import org.layshaft.web.desk.Decimals;

/**
 * How often something repeats for one turn of the input.
 *
 * @param exact a reduced fraction, or a whole number; null where a contact angle makes it a number that none writes
 * @param value the same, rounded half up to six decimals
 */
public record OrderJson(String exact, BigDecimal value) {
    private static final int DECIMALS = 6;

    static OrderJson of(Order order) {
        return new OrderJson(
                order.exact() ? order.perTurn().toString() : null, Decimals.rounded(order.perTurn(), DECIMALS));
    }
}
