package org.layshaft.engine.swap;

import java.util.List;
import org.layshaft.engine.stated.Telling;
import org.layshaft.kb.layout.Mesh;

/**
 * A pair of which a gear is changed, or the side of its crown.
 *
 * @param mesh as it is after the change
 * @param contactBefore transverse contact ratio
 * @param contactAfter the same after the change
 * @param unlike what is not alike on the two now and must be, in sentences
 */
public record PairComparison(
        Mesh mesh, Telling<Double> contactBefore, Telling<Double> contactAfter, List<String> unlike) {
    public PairComparison {
        unlike = List.copyOf(unlike);
    }
}
