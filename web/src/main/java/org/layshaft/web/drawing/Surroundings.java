package org.layshaft.web.drawing;

import java.util.List;
import java.util.stream.Stream;
import org.layshaft.kb.layout.Rail;

/**
 * What lies around the gearing: clutch and engine before it, output behind it, rails above it.
 *
 * @param gearing what the gears cover, with everything in neutral
 * @param axles what axles across cover, with their wheels
 * @param rails ids of the rails from the top down
 */
record Surroundings(Box gearing, List<Box> axles, List<String> rails) {
    /** Leaves room for names of two lines beneath the gears. */
    private static final double CASE_ROOM = 46;

    private static final double RAIL_PITCH = 34;
    /** Leaves room for names above the gears. */
    private static final double ABOVE_GEARS = 74;

    /** Rails lie in the order of the gate; any that it leaves out come after. */
    static Surroundings of(Plan plan) {
        Stream<String> inGate = plan.layout().gate().planes().stream();
        Stream<String> all = plan.layout().all(Rail.class).map(Rail::id);
        return new Surroundings(
                plan.gearing(),
                plan.axles(),
                Stream.concat(inGate, all).distinct().toList());
    }

    double clutchX() {
        return left() - 112;
    }

    /** Of everything but the clutch and what leaves the box. */
    private double left() {
        return axles.stream().mapToDouble(Box::left).reduce(gearing.left(), Math::min);
    }

    private double right() {
        return axles.stream().mapToDouble(Box::right).reduce(gearing.right(), Math::max);
    }

    double engineX() {
        return clutchX() - 48;
    }

    double outputX() {
        return right() + 96;
    }

    /** Where shafts end that leave the box at its front, past the clutch. */
    double frontOutputX() {
        return left() - 96;
    }

    Box caseBox() {
        return gearing.grown(CASE_ROOM);
    }

    double railY(String rail) {
        int fromFoot = rails.size() - 1 - rails.indexOf(rail);
        double top = axles.stream()
                .mapToDouble(axle -> axle.top() + ABOVE_GEARS - 40)
                .reduce(gearing.top(), Math::min);
        return top - ABOVE_GEARS - fromFoot * RAIL_PITCH;
    }

    /** Where an interlock stands that has no rails to rule. */
    double aboveRails() {
        return rails.isEmpty() ? gearing.top() - ABOVE_GEARS : railY(rails.get(0)) - RAIL_PITCH;
    }

    double detentX() {
        return gearing.right() + 58;
    }

    double interlockX() {
        return gearing.right() + 124;
    }

    double railEnd() {
        return gearing.right() + 150;
    }

    /** As far as anything reaches to left and right in any stance, so that the drawing keeps its size from gear to gear. */
    Box steady() {
        return new Box(
                engineX() - 42, gearing.top(), Math.max(right() + 46, railEnd() + Strokes.INTO_MESH), gearing.bottom());
    }

    /** The box moved so far to the side that it does not stick out. */
    Box inside(Box box) {
        double over = Math.max(0, box.right() - steady().right());
        double under = Math.max(0, steady().left() - box.left());
        return box.moved(under - over, 0);
    }

    double leftWheelX() {
        return gearing.left() - 132;
    }

    double rightWheelX() {
        return gearing.right() + 132;
    }
}
