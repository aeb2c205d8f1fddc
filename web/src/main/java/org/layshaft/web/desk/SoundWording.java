package org.layshaft.web.desk;

import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.sound.Order;
import org.layshaft.engine.sound.SourceKind.Family;

/** Findings about sounds in plain words. */
public final class SoundWording {
    private static final int ORDER_DECIMALS = 4;
    private static final int HZ_DECIMALS = 2;

    private SoundWording() {}

    public static String of(Family family) {
        return switch (family) {
            case TEETH -> "Teeth and chains";
            case SAME_TEETH -> "The same teeth again";
            case TURNING -> "Turning";
            case BEARINGS -> "In bearings";
        };
    }

    /** {@code 18.8936}. */
    public static String decimal(Order order) {
        return Decimals.rounded(order.perTurn(), ORDER_DECIMALS).toPlainString();
    }

    /** {@code 888/47}; {@code ≈} before a number that is not rational. */
    public static String exact(Order order) {
        return order.exact() ? order.perTurn().toString() : "≈ " + decimal(order);
    }

    /** {@code 755.74}. */
    public static String hz(Fraction hz) {
        return Decimals.rounded(hz, HZ_DECIMALS).toPlainString();
    }

    /** {@code 0.03 % below}, {@code 1.20 % above}, {@code exactly}. */
    public static String off(Fraction percent) {
        if (percent.isZero()) {
            return "exactly";
        }
        return "%s %% %s"
                .formatted(Decimals.rounded(percent.absolute(), HZ_DECIMALS), percent.signum() < 0 ? "below" : "above");
    }

    public static String load(boolean loaded) {
        return loaded ? "carries power" : "only turns";
    }
}
