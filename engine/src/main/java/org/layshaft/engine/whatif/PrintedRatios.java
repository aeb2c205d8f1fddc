package org.layshaft.engine.whatif;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;

/** Compares the ratios printed in service data with those derived, to the digits printed. */
final class PrintedRatios {
    private PrintedRatios() {}

    static List<Box.Difference> differences(Layout layout, List<Box.DerivedGear> gears) {
        Map<String, Box.DerivedGear> derived =
                gears.stream().collect(Collectors.toMap(Box.DerivedGear::name, Function.identity()));
        List<Box.Difference> differences = new ArrayList<>();
        layout.printedRatios().forEach((name, printed) -> {
            Box.DerivedGear gear = derived.get(name);
            if (gear == null) {
                differences.add(new Box.Difference(
                        name,
                        "%s is printed as %s, but no such gear can be derived"
                                .formatted(Names.gearName(name), printed)));
            } else if (!agrees(gear.ratio(), printed)) {
                differences.add(new Box.Difference(
                        name,
                        "%s is printed as %s and derived as %s = %s"
                                .formatted(
                                        Names.gearName(name), printed, gear.ratio(), rounded(gear.ratio(), printed))));
            }
        });
        return differences;
    }

    /** Printed figures may be rounded or cut off: one unit of the last printed digit is allowed. */
    private static boolean agrees(Fraction ratio, BigDecimal printed) {
        BigDecimal unit = BigDecimal.ONE.movePointLeft(printed.scale());
        return rounded(ratio, printed).subtract(printed).abs().compareTo(unit) <= 0;
    }

    private static BigDecimal rounded(Fraction ratio, BigDecimal printed) {
        return new BigDecimal(ratio.numerator())
                .divide(new BigDecimal(ratio.denominator()), printed.scale(), RoundingMode.HALF_UP);
    }
}
