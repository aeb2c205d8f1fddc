package org.layshaft.kb.check;

import java.math.BigDecimal;
import java.util.List;
import org.layshaft.kb.json.Pointers;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.HalfShaft;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Road;
import org.layshaft.kb.layout.Road.EnginePoint;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedRoad;

/** Facts of the vehicle that contradict one another, or that nothing comes of. */
final class RoadFacts implements LayoutCheck {

    @Override
    public void run(TypedLayout layout, BuiltLayout built, Report report) {
        layout.road().ifPresent(road -> {
            risingSpeeds(road, report);
            factorWithoutTyre(road, report);
            twoCircumferences(road, report);
            axleBehindHalfShafts(road, built.layout(), report);
        });
    }

    private static void risingSpeeds(TypedRoad road, Report report) {
        List<EnginePoint> points = road.facts().engine();
        for (int i = 1; i < points.size(); i++) {
            BigDecimal rpm = points.get(i).rpm();
            BigDecimal before = points.get(i - 1).rpm();
            if (rpm.compareTo(before) <= 0) {
                report.broken(
                        Pointers.child(Pointers.child(road.pointer(), "engine"), i),
                        "The torque of the engine at %s rpm stands after that at %s rpm."
                                .formatted(rpm.toPlainString(), before.toPlainString()),
                        rpm.toPlainString(),
                        "State the points by rising speed, each speed once.");
            }
        }
    }

    private static void factorWithoutTyre(TypedRoad road, Report report) {
        Road facts = road.facts();
        if (facts.dynamicFactor().isPresent() && facts.tyre().isEmpty()) {
            report.doubtful(
                    Pointers.child(road.pointer(), "dynamic_factor"),
                    "The 'dynamic_factor' says how far a tyre rolls for its size, and no 'tyre' is stated.",
                    facts.dynamicFactor().get().toPlainString(),
                    "State the 'tyre', or leave the factor out.");
        }
    }

    private static void twoCircumferences(TypedRoad road, Report report) {
        Road facts = road.facts();
        if (facts.dynamicFactor().isPresent() && facts.rollingCircumferenceMm().isPresent()) {
            int mm = facts.rollingCircumferenceMm().getAsInt();
            report.doubtful(
                    Pointers.child(road.pointer(), "rolling_circumference_mm"),
                    "Both a 'rolling_circumference_mm' and a 'dynamic_factor' are stated; the factor is not used.",
                    Integer.toString(mm),
                    "Leave one of them out.");
        }
    }

    private static void axleBehindHalfShafts(TypedRoad road, Layout layout, Report report) {
        boolean toWheels = layout.outputs().stream()
                .anyMatch(output -> layout.find(HalfShaft.class, output).isPresent());
        road.facts()
                .axleRatio()
                .filter(ratio -> toWheels && ratio.compareTo(BigDecimal.ONE) != 0)
                .ifPresent(ratio -> report.doubtful(
                        Pointers.child(road.pointer(), "axle_ratio"),
                        "The drive leaves by half-shafts, so that the final drive is in the layout, and an 'axle_ratio' is stated beside it.",
                        ratio.toPlainString(),
                        "Leave it out, unless there is a further reduction at the wheels."));
    }
}
