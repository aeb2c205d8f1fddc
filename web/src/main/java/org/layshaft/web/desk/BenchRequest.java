package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;

/**
 * What was measured on a gear at the bench, as written.
 *
 * @param form {@code external} or {@code internal}; empty for external
 * @param teeth counted
 * @param tip tip diameter in mm
 * @param root root diameter in mm
 * @param spans span over teeth, each {@code 5 34.7}: over so many teeth, in mm
 * @param pins measure over pins, {@code 4.5 88.1}: thickness of a pin and the measure, in mm
 * @param helix angle at the tips by rolling, in degrees; 0 for straight teeth
 * @param centre centre distance, {@code 37 96}: teeth of the mate, in mm
 * @param spline a designation to be put into dimensions
 * @param hub the designation of a hub that the spline is to enter
 */
public record BenchRequest(
        Optional<String> form,
        Optional<String> teeth,
        Optional<String> tip,
        Optional<String> root,
        List<String> spans,
        Optional<String> pins,
        Optional<String> helix,
        Optional<String> centre,
        Optional<String> spline,
        Optional<String> hub) {
    public BenchRequest {
        spans = List.copyOf(spans);
    }

    /** Whether nothing at all was measured or designated. */
    public boolean isEmpty() {
        return !isOfGear() && spline.isEmpty() && hub.isEmpty();
    }

    /** Whether anything was measured on a gear. */
    public boolean isOfGear() {
        return form.isPresent()
                || teeth.isPresent()
                || tip.isPresent()
                || root.isPresent()
                || !spans.isEmpty()
                || pins.isPresent()
                || helix.isPresent()
                || centre.isPresent();
    }
}
