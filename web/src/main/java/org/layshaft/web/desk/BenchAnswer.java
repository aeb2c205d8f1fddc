package org.layshaft.web.desk;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.identify.Identification;
import org.layshaft.engine.spline.Spline;
import org.layshaft.engine.spline.SplineEntry;
import org.layshaft.engine.stated.Telling;

/**
 * What something at the bench may be.
 *
 * @param gear empty where nothing was measured on a gear
 * @param splines by their dimensions: of the shaft, and of the hub
 * @param entry whether that shaft enters that hub; empty unless both are given
 */
public record BenchAnswer(Optional<Telling<Identification>> gear, List<Spline> splines, Optional<SplineEntry> entry) {
    public BenchAnswer {
        splines = List.copyOf(splines);
    }
}
